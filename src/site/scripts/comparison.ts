import { comparedSlugs, MOST_COMPARED } from '../../corpus/comparison-address.ts';
import { based } from '../href.ts';
import { COMPARISON_GROUPS } from '../../corpus/comparison-row.ts';
import { sortRows } from '../../corpus/find-sheets.ts';
import type { FinderRow } from '../../corpus/finder-row.ts';
import { unpackFinder, type PackedFinder } from '../../corpus/pack-finder.ts';
import { escapeText } from '../../figures/markup.ts';
import type { ComparedSheet } from '../../render/compared-sheet.ts';
import { comparisonMarkup, letterOf } from '../../render/comparison.ts';

/** Reads the choice from the address, fetches its sheets, and lets the form of the page change it. */
export async function startComparison(): Promise<void> {
  const box = document.querySelector<HTMLElement>('#compare');
  const source = box?.dataset['rows'];
  if (!box || source === undefined) return;
  try {
    // Written by the build that this script belongs to.
    const { rows } = unpackFinder((await fetchJson(source)) as PackedFinder);
    await runComparison(box, rows);
  } catch {
    const said = box.querySelector('[data-said]');
    if (said !== null) said.textContent = 'The list of devices could not be loaded; the pairs below have pages of their own.';
  }
}

async function fetchJson(address: string): Promise<unknown> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${String(response.status)}`);
  return await response.json();
}

async function runComparison(box: HTMLElement, rows: readonly FinderRow[]): Promise<void> {
  const part = (name: string): HTMLElement | null => box.querySelector<HTMLElement>(`[data-${name}]`);
  const [picker, add, list, result, said, only, boxes] = [part('picker'), box.querySelector<HTMLSelectElement>('[data-add]'), part('chosen'), part('result'), part('said'), box.querySelector<HTMLInputElement>('[data-only]'), part('row-boxes')]; // prettier-ignore
  if (!picker || !add || !list || !result || !said || !only || !boxes) return;
  const fetched = new Map<string, ComparedSheet>();
  const parameters = new URL(location.href).searchParams;
  const { slugs, leftOut } = comparedSlugs(parameters.get('sheets'));
  const fetchSheet = async (slug: string): Promise<ComparedSheet | null> =>
    // Written by the build that this script belongs to.
    (await fetchJson(`${box.dataset['sheets'] ?? ''}${encodeURIComponent(slug)}.json`)) as ComparedSheet | null;
  // An address that was kept may name a sheet as it was called before; its file stands under that name too.
  const named = await Promise.all(
    slugs.map(async (slug) => (rows.some((row) => row.slug === slug) ? slug : ((await fetchSheet(slug).catch(() => null))?.slug ?? null))),
  );
  let chosen = [...new Set(named.filter((slug) => slug !== null))];
  const hidden = new Set((parameters.get('without') ?? '').split('.').filter((id) => id !== ''));
  only.checked = parameters.get('only') === 'differing';
  const remarks = [
    ...slugs.filter((_, index) => named[index] === null).map((slug) => `No published sheet has the address “${slug}”; it is left out.`),
    ...(leftOut.length > 0 ? [`At most ${String(MOST_COMPARED)} stand side by side; ${leftOut.join(', ')} left out.`] : []),
  ];
  add.append(...sortRows(rows, { by: 'name', falling: false }).map((row) => new Option(nameOf(row), row.slug)));

  const renew = async (): Promise<void> => {
    const asked = chosen;
    await Promise.all(
      asked.filter((slug) => !fetched.has(slug)).map(async (slug) => {
        const sheet = await fetchSheet(slug);
        if (sheet !== null) fetched.set(slug, sheet);
      }),
    ); // prettier-ignore
    if (asked !== chosen) return;
    const sheets = asked.map((slug) => fetched.get(slug)).filter((sheet) => sheet !== undefined);
    list.innerHTML = sheets.map((sheet, index) => `<li><span class="ring">${letterOf(index)}</span> ${escapeText(sheet.fullName)} <button type="button" class="as-link" data-drop="${escapeText(sheet.slug)}" aria-label="take away ${escapeText(sheet.fullName)}">take away</button></li>`).join(''); // prettier-ignore
    for (const option of add.options) option.disabled = chosen.includes(option.value);
    add.value = '';
    add.disabled = chosen.length >= MOST_COMPARED;
    const enough = sheets.length >= 2;
    said.textContent = [...remarks, ...(enough ? [] : [sheets.length === 1 ? 'Add one more device.' : 'Add two to four devices.'])].join(
      ' ',
    );
    remarks.length = 0;
    result.innerHTML = enough ? based(comparisonMarkup(sheets, rows, { onlyDiffering: only.checked, hidden })) : '';
    const title = part('title');
    if (title !== null) title.textContent = enough ? sheets.map((sheet) => sheet.name).join(', ') : 'Compare';
    for (const name of ['foot', 'choice']) {
      const element = part(name);
      if (element !== null) element.hidden = !enough;
    }
    showRowBoxes(boxes, sheets, hidden);
    remember();
  };
  const remember = (): void => {
    const pairs = [
      ...(chosen.length > 0 ? [`sheets=${chosen.map(encodeURIComponent).join(',')}`] : []),
      ...(only.checked ? ['only=differing'] : []),
      ...(hidden.size > 0 ? [`without=${[...hidden].map(encodeURIComponent).join('.')}`] : []),
    ];
    history.replaceState(null, '', pairs.length === 0 ? location.pathname : `?${pairs.join('&')}`);
  };

  add.addEventListener('change', () => {
    if (add.value !== '' && chosen.length < MOST_COMPARED) chosen = [...chosen, add.value];
    void renew();
  });
  only.addEventListener('change', () => {
    void renew();
  });
  list.addEventListener('click', (event) => {
    const slug = event.target instanceof HTMLElement ? event.target.dataset['drop'] : undefined;
    if (slug === undefined) return;
    chosen = chosen.filter((each) => each !== slug);
    void renew().then(() => {
      add.focus();
    });
  });
  boxes.addEventListener('change', (event) => {
    const input = event.target;
    if (!(input instanceof HTMLInputElement)) return;
    if (input.checked) hidden.delete(input.value);
    else hidden.add(input.value);
    void renew();
  });
  picker.hidden = false;
  await renew();
}

function nameOf({ name, maker }: FinderRow): string {
  return name.startsWith(maker) ? name : `${maker} ${name}`;
}

/** A box for each row of the sheets; drawn once for a set of rows, so that a box keeps the focus. */
function showRowBoxes(boxes: HTMLElement, sheets: readonly ComparedSheet[], hidden: ReadonlySet<string>): void {
  const labels = new Map<string, string>();
  for (const group of COMPARISON_GROUPS)
    for (const sheet of sheets) for (const row of sheet.rows) if (row.group === group && !labels.has(row.id)) labels.set(row.id, row.label);
  const key = [...labels.keys()].join();
  if (boxes.dataset['key'] === key) return;
  boxes.dataset['key'] = key;
  boxes.innerHTML = [...labels]
    .map(
      ([id, label]) =>
        `<li><label><input type="checkbox" value="${escapeText(id)}"${hidden.has(id) ? '' : ' checked'}> <span>${escapeText(label)}</span></label></li>`,
    )
    .join('');
}
