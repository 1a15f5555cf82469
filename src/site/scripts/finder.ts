import { findSheets } from '../../corpus/find-sheets.ts';
import { based } from '../href.ts';
import {
  CHOICE_GROUPS,
  finderAddress,
  RANGE_COLUMNS,
  readFinderQuery,
  withChoice,
  withRange,
  type FinderQuery,
} from '../../corpus/finder-query.ts';
import type { FinderRegister } from '../../corpus/finder-row.ts';
import { finderWayOut } from '../../corpus/finder-way-out.ts';
import { querySentence } from '../../corpus/finder-words.ts';
import { unpackFinder, type PackedFinder } from '../../corpus/pack-finder.ts';
import { scatterOf } from '../../render/finder-scatter-of.ts';
import { finderNote, MORE_ROWS } from '../../render/finder-note.ts';
import { finderTable } from '../../render/finder-table.ts';
import { set, showChoices } from './finder-choices.ts';
import { bindColumns } from './finder-columns.ts';
import { bindRange, type RangeControl } from './range-control.ts';
import { MOST_COMPARED } from '../../corpus/comparison-address.ts';

/** Rows drawn at once; more on request. */
const FIRST_ROWS = 50;

/** Fetches the register and lets ranges, choices, heads and boxes of the page ask it. The address always says what is asked. */
export async function startFinder(): Promise<void> {
  const box = document.querySelector<HTMLElement>('#finder');
  const source = box?.dataset['rows'];
  if (!box || source === undefined) return;
  let register: FinderRegister;
  try {
    const response = await fetch(source);
    if (!response.ok) throw new Error(String(response.status));
    // Written by the build that this script belongs to.
    register = unpackFinder((await response.json()) as PackedFinder);
  } catch {
    say(box, 'The list of devices could not be loaded, so nothing can be filtered; the table below holds them all.');
    return;
  }
  runFinder(box, register);
}

function say(box: HTMLElement, words: string): void {
  const refused = box.querySelector<HTMLElement>('[data-refused]');
  if (refused === null) return;
  refused.textContent = words;
  refused.hidden = words === '';
}

function runFinder(box: HTMLElement, register: FinderRegister): void {
  const part = (name: string): HTMLElement | null => box.querySelector<HTMLElement>(`[data-${name}]`);
  const form = box.querySelector<HTMLElement>('#finder-form');
  const scatter = part('scatter');
  const table = part('table');
  const clear = part('clear');
  if (form === null || table === null) return;
  const densest = Math.max(0.001, ...register.rows.map((row) => row.density ?? 0));
  const read = readFinderQuery(new URL(location.href).searchParams);
  let query = read.query;
  let shown = FIRST_ROWS;
  const chosen = new Set(new URL(location.href).searchParams.getAll('compare').flatMap((list) => list.split(',')).filter((slug) => register.rows.some((row) => row.slug === slug)).slice(0, MOST_COMPARED)); // prettier-ignore
  say(
    box,
    read.refused
      .map(({ name, value }) => `The address says “${name}=${value}”, which the finder does not understand; it is left out.`)
      .join(' '),
  );

  let width = 846;
  const fit = (): void => {
    width = scatter?.clientWidth || 846;
    for (const control of controls) control.fit();
  };
  const renew = (): void => {
    const found = findSheets(register.rows, query);
    const sentence = querySentence(query, register);
    set(part('count'), `${String(found.length)} of ${String(register.rows.length)}`);
    set(part('sentence'), sentence === '' ? 'nothing set yet' : sentence);
    set(part('status'), `${String(found.length)} of ${String(register.rows.length)} devices found`);
    if (clear !== null) clear.hidden = sentence === '';
    if (scatter !== null) scatter.innerHTML = scatterOf(register.rows, new Set(found), query.ranges, width);
    const region = table.querySelector('.wide-table') ?? table;
    region.innerHTML =
      found.length === 0
        ? `<p class="nothing">No device fulfils all of this. ${finderWayOut(register, query)}</p>`
        : based(
            finderTable(found.slice(0, shown), { sort: query.sort, columns: query.columns, currency: register.currency, densest, chosen }),
          );
    more(found.length);
    for (const control of controls) control.show(query.ranges[control.column]);
    showChoices(form, query);
    columns.show(query.columns);
    remember();
  };
  const ask = (next: Partial<FinderQuery>): void => {
    query = { ...query, ...next };
    shown = FIRST_ROWS;
    renew();
  };
  const remember = (): void => {
    const address = new URL(location.href);
    address.search = new URLSearchParams(
      [...finderAddress(query), ...[...chosen].map((slug) => ['compare', slug] as const)].map(([name, value]) => [name, value]),
    ).toString();
    history.replaceState(null, '', address);
  };
  const more = (count: number): void => {
    const note = part('more');
    if (note === null) return;
    note.innerHTML = finderNote({
      shown,
      count,
      sort: query.sort,
      currency: register.currency,
      chosen,
      compare: box.dataset['compare'] ?? '',
    });
  };

  const controls: RangeControl[] = [...form.querySelectorAll<HTMLElement>('[data-range]')].flatMap((element) => {
    const column = RANGE_COLUMNS.find((each) => each === element.dataset['range']);
    const values = column === undefined ? [] : register.rows.map((row) => row[column]);
    const control = column === undefined ? null : bindRange(element, column, values, (range) => { ask(withRange(query, column, range)); }); // prettier-ignore
    return control === null ? [] : [control];
  });
  const columns = bindColumns(form, (next) => {
    ask({ columns: next });
  });

  form.addEventListener('change', (event) => {
    const field = event.target;
    const holder = field instanceof Element ? field.closest<HTMLElement>('[data-choice]') : null;
    const group = CHOICE_GROUPS.find((each) => each === holder?.dataset['choice']);
    if (holder === null || group === undefined) return;
    const words =
      field instanceof HTMLSelectElement
        ? [field.value].filter((word) => word !== '')
        : [...holder.querySelectorAll<HTMLInputElement>('input:checked')].map((input) => input.value);
    ask(withChoice(query, group, words));
  });
  box.addEventListener('click', (event) => {
    const target = event.target instanceof Element ? event.target.closest<HTMLElement>('button') : null;
    const by = target?.dataset['sort'];
    if (target === clear && clear !== null) {
      ask({ ranges: {}, choices: {} });
      form.querySelector<HTMLElement>('summary')?.focus();
    } else if (by !== undefined) {
      const isSame = query.sort.by === by;
      const { query: read } = readFinderQuery([['sort', `${(isSame ? !query.sort.falling : by !== 'name') ? '-' : ''}${by}`]]);
      ask({ sort: read.sort });
      table.querySelector<HTMLElement>(`[data-sort="${by}"]`)?.focus();
    } else if (target !== null && 'all' in target.dataset) {
      shown += MORE_ROWS;
      renew();
    }
  });
  table.addEventListener('change', (event) => {
    const input = event.target;
    if (!(input instanceof HTMLInputElement) || input.dataset['compare'] === undefined) return;
    if (input.checked && chosen.size >= MOST_COMPARED) {
      input.checked = false;
      say(box, `At most ${String(MOST_COMPARED)} devices stand side by side: take one away first.`);
      return;
    }
    say(box, '');
    if (input.checked) chosen.add(input.dataset['compare']);
    else chosen.delete(input.dataset['compare']);
    more(findSheets(register.rows, query).length);
    remember();
  });
  addEventListener('resize', () => {
    fit();
    renew();
  });

  if (matchMedia('(max-width: 839px)').matches)
    for (const group of form.querySelectorAll<HTMLDetailsElement>('[data-folds]')) group.open = false;
  box.querySelector('.turner')?.remove();
  box.classList.add('with-script');
  form.hidden = false;
  fit();
  renew();
}
