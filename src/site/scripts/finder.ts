import { findSheets } from '../../corpus/find-sheets.ts';
import { based } from '../href.ts';
import { finderAddress, RANGE_COLUMNS, readFinderQuery, withRange, type FinderQuery } from '../../corpus/finder-query.ts';
import type { FinderRegister } from '../../corpus/finder-row.ts';
import { finderWayOut } from '../../corpus/finder-way-out.ts';
import { querySentence } from '../../corpus/finder-words.ts';
import { unpackFinder, type PackedFinder } from '../../corpus/pack-finder.ts';
import { scatterOf } from '../../render/finder-scatter-of.ts';
import { finderNote, MORE_ROWS } from '../../render/finder-note.ts';
import { finderTable } from '../../render/finder-table.ts';
import { say, set, showChoices } from './finder-choices.ts';
import { bindColumns } from './finder-columns.ts';
import { bindButtons, bindChoices, bindTicks, type Finder, type FinderPage } from './finder-events.ts';
import { bindRange, type RangeControl } from './range-control.ts';
import { MOST_COMPARED } from '../../corpus/comparison-address.ts';

/** Rows drawn at once; more on request. */
const FIRST_ROWS = 50;
/** Width of the chart before the page is measured, px. */
const FIRST_WIDTH = 846;

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

function runFinder(box: HTMLElement, register: FinderRegister): void {
  const part = (name: string): HTMLElement | null => box.querySelector<HTMLElement>(`[data-${name}]`);
  const form = box.querySelector<HTMLElement>('#finder-form');
  const table = part('table');
  if (form === null || table === null) return;
  const page: FinderPage = { box, form, table, part };
  const { searchParams } = new URL(location.href);
  const { query, refused } = readFinderQuery(searchParams);
  const ticked = searchParams.getAll('compare').flatMap((list) => list.split(','));
  const chosen = new Set(ticked.filter((slug) => register.rows.some((row) => row.slug === slug)).slice(0, MOST_COMPARED));
  say(
    box,
    refused
      .map(({ name, value }) => `The address says “${name}=${value}”, which the finder does not understand; it is left out.`)
      .join(' '),
  );
  const finder = finderOn(page, register, query, chosen);
  bindChoices(page, finder);
  bindButtons(page, finder);
  bindTicks(page, finder);
  addEventListener('resize', finder.fit);
  if (matchMedia('(max-width: 839px)').matches)
    for (const group of form.querySelectorAll<HTMLDetailsElement>('[data-folds]')) group.open = false;
  box.querySelector('.turner')?.remove();
  box.classList.add('with-script');
  form.hidden = false;
  finder.fit();
}

function finderOn({ box, form, table, part }: FinderPage, register: FinderRegister, asked: FinderQuery, chosen: Set<string>): Finder {
  const [scatter, clear] = [part('scatter'), part('clear')];
  const densest = Math.max(0.001, ...register.rows.map((row) => row.density ?? 0));
  let query = asked;
  let shown = FIRST_ROWS;
  let width = FIRST_WIDTH;
  const ask = (next: Partial<FinderQuery>): void => {
    query = { ...query, ...next };
    shown = FIRST_ROWS;
    renew();
  };
  const controls = rangeControls(form, register, (column, range) => {
    ask(withRange(query, column, range));
  });
  const columns = bindColumns(form, (next) => {
    ask({ columns: next });
  });
  const remember = (): void => {
    const address = new URL(location.href);
    address.search = new URLSearchParams(
      [...finderAddress(query), ...[...chosen].map((slug) => ['compare', slug] as const)].map(([name, value]) => [name, value]),
    ).toString();
    history.replaceState(null, '', address);
  };
  const showNote = (count: number): void => {
    const note = part('more');
    if (note === null) return;
    const compare = box.dataset['compare'] ?? '';
    note.innerHTML = finderNote({ shown, count, sort: query.sort, currency: register.currency, chosen, compare });
  };
  const renew = (): void => {
    const found = findSheets(register.rows, query);
    const sentence = querySentence(query, register);
    const counts = `${String(found.length)} of ${String(register.rows.length)}`;
    set(part('count'), counts);
    set(part('sentence'), sentence === '' ? 'nothing set yet' : sentence);
    set(part('status'), `${counts} devices found`);
    if (clear !== null) clear.hidden = sentence === '';
    if (scatter !== null) scatter.innerHTML = scatterOf(register.rows, new Set(found), query.ranges, width);
    const look = { sort: query.sort, columns: query.columns, currency: register.currency, densest, chosen };
    const region = table.querySelector('.wide-table') ?? table;
    region.innerHTML =
      found.length === 0
        ? `<p class="nothing">No device fulfils all of this. ${finderWayOut(register, query)}</p>`
        : based(finderTable(found.slice(0, shown), look));
    showNote(found.length);
    for (const control of controls) control.show(query.ranges[control.column]);
    showChoices(form, query);
    columns.show(query.columns);
    remember();
  };
  return {
    query: () => query,
    ask,
    showMore() {
      shown += MORE_ROWS;
      renew();
    },
    tick(slug, isOn) {
      if (isOn && chosen.size >= MOST_COMPARED) return false;
      if (isOn) chosen.add(slug);
      else chosen.delete(slug);
      showNote(findSheets(register.rows, query).length);
      remember();
      return true;
    },
    fit() {
      width = scatter?.clientWidth || FIRST_WIDTH;
      for (const control of controls) control.fit();
      renew();
    },
  };
}

function rangeControls(
  form: HTMLElement,
  register: FinderRegister,
  changed: (column: RangeControl['column'], range: Parameters<typeof withRange>[2]) => void,
): readonly RangeControl[] {
  return [...form.querySelectorAll<HTMLElement>('[data-range]')].flatMap((element) => {
    const column = RANGE_COLUMNS.find((each) => each === element.dataset['range']);
    if (column === undefined) return [];
    const values = register.rows.map((row) => row[column]);
    const control = bindRange(element, column, values, (range) => {
      changed(column, range);
    });
    return control === null ? [] : [control];
  });
}
