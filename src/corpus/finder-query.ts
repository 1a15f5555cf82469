/** Columns that have a range. */
export const RANGE_COLUMNS = ['watts', 'density', 'volume', 'ports', 'year', 'price'] as const;
export type RangeColumn = (typeof RANGE_COLUMNS)[number];

/** Groups of words to choose from; several chosen words of one group mean any of them. */
export const CHOICE_GROUPS = ['kind', 'family', 'switches', 'controllers'] as const;
export type ChoiceGroup = (typeof CHOICE_GROUPS)[number];

/** Columns of numbers that the table can show and sort by. */
export const NUMBER_COLUMNS = ['watts', 'volume', 'density', 'specific', 'mass', 'efficiency', 'ports', 'year', 'price'] as const;
export type NumberColumn = (typeof NUMBER_COLUMNS)[number];
type SortColumn = NumberColumn | 'name';

/** Columns as the table shows them at first. */
export const FIRST_COLUMNS: readonly NumberColumn[] = ['watts', 'volume', 'density', 'specific', 'mass', 'efficiency', 'ports'];

/** An open end is null. */
export interface Range {
  readonly low: number | null;
  readonly high: number | null;
}

/** What is asked of the finder. */
export interface FinderQuery {
  readonly ranges: Readonly<Partial<Record<RangeColumn, Range>>>;
  readonly choices: Readonly<Partial<Record<ChoiceGroup, readonly string[]>>>;
  readonly sort: { readonly by: SortColumn; readonly falling: boolean };
  readonly columns: readonly NumberColumn[];
}

export const NO_QUERY: FinderQuery = { ranges: {}, choices: {}, sort: { by: 'density', falling: true }, columns: FIRST_COLUMNS };

/** A piece of an address that says nothing the finder understands. */
export interface RefusedPiece {
  readonly name: string;
  readonly value: string;
}

const NUMBER = String.raw`-?\d+(?:[.,]\d+)?`;
const RANGE = new RegExp(`^(${NUMBER})?(?:\\.\\.|–|_)(${NUMBER})?$`, 'u');

/**
 * Reads a query from the pairs of an address: `watts=60..140`, `watts=60..` (from 60), `kind=wall charger`, `sort=-density`,
 * `columns=watts.mass`. A range written from high to low is turned round; whatever else is not understood is refused by name.
 */
export function readFinderQuery(pairs: Iterable<readonly [string, string]>): {
  readonly query: FinderQuery;
  readonly refused: readonly RefusedPiece[];
} {
  const ranges: Partial<Record<RangeColumn, Range>> = {};
  const choices: Partial<Record<ChoiceGroup, string[]>> = {};
  let { sort, columns } = NO_QUERY;
  const refused: RefusedPiece[] = [];
  for (const [name, value] of pairs) {
    const range = memberOf(RANGE_COLUMNS, name);
    const group = memberOf(CHOICE_GROUPS, name);
    if (range !== null) {
      const read = readRange(value);
      if (read === null) refused.push({ name, value });
      else ranges[range] = read;
    } else if (group !== null && value !== '') choices[group] = [...new Set([...(choices[group] ?? []), value])];
    else if (name === 'sort') {
      const by = memberOf<SortColumn>([...NUMBER_COLUMNS, 'name'], value.replace(/^-/u, ''));
      if (by === null) refused.push({ name, value });
      else sort = { by, falling: value.startsWith('-') };
    } else if (name === 'columns') {
      const named = value.split('.').map((word) => memberOf(NUMBER_COLUMNS, word));
      const known = [...new Set(named.filter((word) => word !== null))];
      if (known.length === 0 || named.includes(null)) refused.push({ name, value });
      if (known.length > 0) columns = known;
    } else if (name !== 'compare') refused.push({ name, value });
  }
  return { query: { ranges, choices, sort, columns }, refused };
}

/** The pairs of an address that say this query; what is as at first is left out, so an empty query has a bare address. */
export function finderAddress(query: FinderQuery): readonly (readonly [string, string])[] {
  const pairs: [string, string][] = [];
  for (const column of RANGE_COLUMNS) {
    const range = query.ranges[column];
    if (range !== undefined && (range.low !== null || range.high !== null)) {
      pairs.push([column, `${range.low === null ? '' : String(range.low)}..${range.high === null ? '' : String(range.high)}`]);
    }
  }
  for (const group of CHOICE_GROUPS) for (const word of query.choices[group] ?? []) pairs.push([group, word]);
  if (query.sort.by !== NO_QUERY.sort.by || query.sort.falling !== NO_QUERY.sort.falling) {
    pairs.push(['sort', `${query.sort.falling ? '-' : ''}${query.sort.by}`]);
  }
  if (query.columns.join() !== FIRST_COLUMNS.join()) pairs.push(['columns', query.columns.join('.')]);
  return pairs;
}

/** The query with one range set, or left out where it is null. */
export function withRange(query: FinderQuery, column: RangeColumn, range: Range | null): FinderQuery {
  const others = Object.entries(query.ranges).filter(([name]) => name !== column);
  return { ...query, ranges: Object.fromEntries(range === null ? others : [...others, [column, range]]) };
}

/** The query with the chosen words of one group; none leaves the group out. */
export function withChoice(query: FinderQuery, group: ChoiceGroup, words: readonly string[]): FinderQuery {
  const others = Object.entries(query.choices).filter(([name]) => name !== group);
  return { ...query, choices: Object.fromEntries(words.length === 0 ? others : [...others, [group, words]]) };
}

function readRange(value: string): Range | null {
  const [, low, high] = RANGE.exec(value.trim()) ?? [];
  if (low === undefined && high === undefined) return null;
  const [from, to] = [numberOf(low), numberOf(high)];
  return from !== null && to !== null && from > to ? { low: to, high: from } : { low: from, high: to };
}

function numberOf(text: string | undefined): number | null {
  return text === undefined ? null : Number(text.replace(',', '.'));
}

function memberOf<T extends string>(list: readonly T[], word: string): T | null {
  return list.find((each) => each === word) ?? null;
}
