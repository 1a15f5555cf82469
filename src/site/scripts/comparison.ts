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

/** What the page holds for the choice. */
interface ComparisonForm {
  readonly picker: HTMLElement;
  readonly add: HTMLSelectElement;
  readonly list: HTMLElement;
  readonly result: HTMLElement;
  readonly said: HTMLElement;
  readonly only: HTMLInputElement;
  readonly boxes: HTMLElement;
  /** What stands beside a comparison alone, and its title. */
  readonly foot: readonly HTMLElement[];
  readonly title: HTMLElement | null;
}

/** What the reader has chosen; `remarks` are said once. */
interface Choice {
  slugs: readonly string[];
  readonly hidden: Set<string>;
  readonly remarks: string[];
}

type FetchSheet = (slug: string) => Promise<ComparedSheet | null>;

async function runComparison(box: HTMLElement, rows: readonly FinderRow[]): Promise<void> {
  const form = formOf(box);
  if (form === null) return;
  if (rows.length < 2) {
    form.said.textContent =
      rows.length === 0 ? 'No teardown is published yet.' : 'One teardown is published so far; a comparison needs two.';
    return;
  }
  const fetchSheet: FetchSheet = async (slug) =>
    // Written by the build that this script belongs to.
    (await fetchJson(`${box.dataset['sheets'] ?? ''}${encodeURIComponent(slug)}.json`)) as ComparedSheet | null;
  const choice = await choiceInAddress(rows, fetchSheet, form);
  form.add.append(...sortRows(rows, { by: 'name', falling: false }).map((row) => new Option(nameOf(row), row.slug)));
  const fetched = new Map<string, ComparedSheet>();
  const renew = async (): Promise<void> => {
    const asked = choice.slugs;
    await fetchMissing(asked, fetched, fetchSheet);
    // The reader chose otherwise meanwhile.
    if (asked !== choice.slugs) return;
    const sheets = asked.map((slug) => fetched.get(slug)).filter((sheet) => sheet !== undefined);
    showChosen(form, sheets, choice);
    showComparison(form, sheets, rows, choice);
    rememberChoice(form, choice);
  };
  listenToForm(form, choice, renew);
  form.picker.hidden = false;
  await renew();
}

function formOf(box: HTMLElement): ComparisonForm | null {
  const part = (name: string): HTMLElement | null => box.querySelector<HTMLElement>(`[data-${name}]`);
  const [picker, list, result, said, boxes] = [part('picker'), part('chosen'), part('result'), part('said'), part('row-boxes')];
  const [add, only] = [box.querySelector<HTMLSelectElement>('[data-add]'), box.querySelector<HTMLInputElement>('[data-only]')];
  if (!picker || !add || !list || !result || !said || !only || !boxes) return null;
  const foot = [part('foot'), part('choice')].filter((element) => element !== null);
  return { picker, add, list, result, said, only, boxes, foot, title: part('title') };
}

/** Reads the choice that the address names. One that was kept may name a sheet as it was called before; its file stands under that name too. */
async function choiceInAddress(rows: readonly FinderRow[], fetchSheet: FetchSheet, { only }: ComparisonForm): Promise<Choice> {
  const parameters = new URL(location.href).searchParams;
  const { slugs, leftOut } = comparedSlugs(parameters.get('sheets'));
  const named = await Promise.all(
    slugs.map(async (slug) => (rows.some((row) => row.slug === slug) ? slug : ((await fetchSheet(slug).catch(() => null))?.slug ?? null))),
  );
  only.checked = parameters.get('only') === 'differing';
  return {
    slugs: [...new Set(named.filter((slug) => slug !== null))],
    hidden: new Set((parameters.get('without') ?? '').split('.').filter((id) => id !== '')),
    remarks: [
      ...slugs.filter((_, index) => named[index] === null).map((slug) => `No published sheet has the address “${slug}”; it is left out.`),
      ...(leftOut.length > 0 ? [`At most ${String(MOST_COMPARED)} stand side by side; ${leftOut.join(', ')} left out.`] : []),
    ],
  };
}

async function fetchMissing(slugs: readonly string[], fetched: Map<string, ComparedSheet>, fetchSheet: FetchSheet): Promise<void> {
  const missing = slugs.filter((slug) => !fetched.has(slug));
  await Promise.all(
    missing.map(async (slug) => {
      const sheet = await fetchSheet(slug);
      if (sheet !== null) fetched.set(slug, sheet);
    }),
  );
}

/** The chosen sheets with a way to take each away, and what the reader is told. */
function showChosen({ list, add, said }: ComparisonForm, sheets: readonly ComparedSheet[], { slugs, remarks }: Choice): void {
  list.innerHTML = sheets.map((sheet, index) => `<li><span class="ring">${letterOf(index)}</span> ${escapeText(sheet.fullName)} <button type="button" class="as-link" data-drop="${escapeText(sheet.slug)}" aria-label="take away ${escapeText(sheet.fullName)}">take away</button></li>`).join(''); // prettier-ignore
  for (const option of add.options) option.disabled = slugs.includes(option.value);
  add.value = '';
  add.disabled = slugs.length >= MOST_COMPARED;
  const asking = sheets.length >= 2 ? [] : [sheets.length === 1 ? 'Add one more device.' : 'Add two to four devices.'];
  said.textContent = [...remarks, ...asking].join(' ');
  remarks.length = 0;
}

/** The comparison itself, where there are two sheets for one. */
function showComparison(form: ComparisonForm, sheets: readonly ComparedSheet[], rows: readonly FinderRow[], { hidden }: Choice): void {
  const { result, only, title, foot, boxes } = form;
  const isOne = sheets.length >= 2;
  result.innerHTML = isOne ? based(comparisonMarkup(sheets, rows, { onlyDiffering: only.checked, hidden })) : '';
  if (title !== null) title.textContent = isOne ? sheets.map((sheet) => sheet.name).join(', ') : 'Compare';
  for (const element of foot) element.hidden = !isOne;
  showRowBoxes(boxes, sheets, hidden);
}

/** Puts the choice into the address, so that it can be kept. */
function rememberChoice({ only }: ComparisonForm, { slugs, hidden }: Choice): void {
  const pairs = [
    ...(slugs.length > 0 ? [`sheets=${slugs.map(encodeURIComponent).join(',')}`] : []),
    ...(only.checked ? ['only=differing'] : []),
    ...(hidden.size > 0 ? [`without=${[...hidden].map(encodeURIComponent).join('.')}`] : []),
  ];
  history.replaceState(null, '', pairs.length === 0 ? location.pathname : `?${pairs.join('&')}`);
}

function listenToForm({ add, only, list, boxes }: ComparisonForm, choice: Choice, renew: () => Promise<void>): void {
  add.addEventListener('change', () => {
    if (add.value !== '' && choice.slugs.length < MOST_COMPARED) choice.slugs = [...choice.slugs, add.value];
    void renew();
  });
  only.addEventListener('change', () => {
    void renew();
  });
  list.addEventListener('click', (event) => {
    const slug = event.target instanceof HTMLElement ? event.target.dataset['drop'] : undefined;
    if (slug === undefined) return;
    choice.slugs = choice.slugs.filter((each) => each !== slug);
    void renew().then(() => {
      add.focus();
    });
  });
  boxes.addEventListener('change', (event) => {
    const input = event.target;
    if (!(input instanceof HTMLInputElement)) return;
    if (input.checked) choice.hidden.delete(input.value);
    else choice.hidden.add(input.value);
    void renew();
  });
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
