import { columnWords } from '../corpus/finder-words.ts';
import type { FinderQuery, NumberColumn } from '../corpus/finder-query.ts';
import type { FinderRow } from '../corpus/finder-row.ts';
import { escapeText } from '../figures/markup.ts';
import { shareBar } from '../figures/share-bar.ts';
import { ratingMarks } from './mark.ts';
import { fixedNumber } from './fixed-number.ts';

/** Columns whose numbers are whole as a rule. */
const BROKEN: readonly NumberColumn[] = ['watts', 'price'];

/** How the table of found devices is drawn. */
export interface FinderTableOptions {
  readonly sort: FinderQuery['sort'];
  readonly columns: FinderQuery['columns'];
  readonly currency: string | null;
  /** Highest density of the register: the one scale of the bars. */
  readonly densest: number;
  /** With a script: heads that sort, and a box for the comparison. Chosen slugs; null without a script. */
  readonly chosen: ReadonlySet<string> | null;
}

/** Table of the found devices in the given order. */
export function finderTable(rows: readonly FinderRow[], options: FinderTableOptions): string {
  const { columns, chosen, currency } = options;
  const heads = columns.map((column) => headOf(column, columnWords(column, currency).head, 'n', options));
  const compare = chosen === null ? '' : '<th scope="col" class="pick">Compare</th>';
  const decimals = decimalsIn(rows, options);
  return (
    `<table class="found"><caption class="vh">Devices found</caption><thead><tr>${headOf('name', 'Device', '', options)}${heads.join('')}<th scope="col" class="rated-head">Ratings</th>${compare}</tr></thead>` +
    `<tbody>${rows.map((row) => rowOf(row, decimals, options)).join('')}</tbody></table>`
  );
}

function headOf(by: FinderQuery['sort']['by'], words: string, className: string, { sort, chosen }: FinderTableOptions): string {
  const isSorted = sort.by === by;
  const state = isSorted ? ` aria-sort="${sort.falling ? 'descending' : 'ascending'}"` : '';
  const arrow = isSorted ? ` <span aria-hidden="true">${sort.falling ? '▼' : '▲'}</span>` : '';
  const label = `${escapeText(words)}${arrow}`;
  const content = chosen === null ? label : `<button type="button" data-sort="${by}">${label}</button>`;
  return `<th scope="col"${className === '' ? '' : ` class="${className}"`}${state}>${content}</th>`;
}

/** Every number of a column has the same decimals: those of the column, or one more where a row is not a whole number. */
function decimalsIn(
  rows: readonly FinderRow[],
  { columns, currency }: FinderTableOptions,
): Readonly<Partial<Record<NumberColumn, number>>> {
  return Object.fromEntries(
    columns.map((column) => {
      const { decimals } = columnWords(column, currency);
      const isBroken = BROKEN.includes(column) && rows.some((row) => row[column] !== null && !Number.isInteger(row[column]));
      return [column, isBroken ? decimals + (column === 'price' ? 2 : 1) : decimals];
    }),
  );
}

function rowOf(
  row: FinderRow,
  decimalsOf: Readonly<Partial<Record<NumberColumn, number>>>,
  { columns, densest, chosen }: FinderTableOptions,
): string {
  const name = row.name.startsWith(row.maker) ? row.name : `${row.maker} ${row.name}`;
  const cells = columns.map((column) => {
    const value = row[column];
    if (value === null) return '<td class="n faded"><span aria-hidden="true">–</span><span class="vh">not known</span></td>';
    const decimals = decimalsOf[column] ?? 0;
    const shown = column === 'year' ? String(value) : fixedNumber(value, decimals);
    const bar = column === 'density' ? shareBar({ fraction: densest > 0 ? value / densest : 0, tick: null, style: 'filled' }) : '';
    return `<td class="n${column === 'density' ? ' dens' : ''}">${shown}${bar}</td>`;
  });
  const compare =
    chosen === null
      ? ''
      : `<td class="pick"><input type="checkbox" data-compare="${escapeText(row.slug)}" aria-label="Compare ${escapeText(name)}"${chosen.has(row.slug) ? ' checked' : ''}></td>`;
  const number = row.number === null ? '' : ` <span class="mono soft">${escapeText(row.number)}</span>`;
  return `<tr><th scope="row" class="dev"><a href="/teardowns/${row.slug}/">${escapeText(name)}</a>${number}</th>${cells.join('')}<td class="marks">${ratingMarks(row)}</td>${compare}</tr>`;
}
