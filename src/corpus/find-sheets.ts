import { compareText } from './compare-text.ts';
import { CHOICE_GROUPS, RANGE_COLUMNS, type FinderQuery } from './finder-query.ts';
import type { FinderRow } from './finder-row.ts';

/** Rows that fulfil every range and every group of choices, sorted. What is not known fulfils no range that is set. */
export function findSheets(rows: readonly FinderRow[], query: FinderQuery): readonly FinderRow[] {
  return sortRows(
    rows.filter((row) => fulfils(row, query)),
    query.sort,
  );
}

/** Whether one row fulfils a query. */
export function fulfils(row: FinderRow, { ranges, choices }: FinderQuery): boolean {
  for (const column of RANGE_COLUMNS) {
    const range = ranges[column];
    if (range === undefined) continue;
    const value = row[column];
    if (value === null) return false;
    if ((range.low !== null && value < range.low) || (range.high !== null && value > range.high)) return false;
  }
  for (const group of CHOICE_GROUPS) {
    const wanted = choices[group] ?? [];
    if (wanted.length === 0) continue;
    const has = row[group];
    if (!wanted.some((word) => (typeof has === 'string' ? has === word : has.includes(word)))) return false;
  }
  return true;
}

/** Sorted rows; those without the number come last whichever way the others run, and equals stand in the order of their addresses. */
export function sortRows(rows: readonly FinderRow[], { by, falling }: FinderQuery['sort']): readonly FinderRow[] {
  const way = falling ? -1 : 1;
  return [...rows].sort((one, other) => {
    if (by === 'name') return way * compareText(nameKey(one), nameKey(other)) || compareText(one.slug, other.slug);
    const [a, b] = [one[by], other[by]];
    if (a === null || b === null) return Number(a === null) - Number(b === null) || compareText(one.slug, other.slug);
    return way * (a - b) || compareText(one.slug, other.slug);
  });
}

function nameKey(row: FinderRow): string {
  return `${row.maker} ${row.name}`.toLowerCase();
}
