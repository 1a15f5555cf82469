import { escapeText } from '../figures/markup.ts';
import type { PreparedSheet } from '../corpus/prepared.ts';
import { capacityOf } from '../sharing/capacity-of.ts';
import { capacitySentence } from '../sharing/capacity-words.ts';
import { knownOrders } from '../sharing/known-orders.ts';
import { readerAnswers } from '../sharing/reader-answers.ts';
import { setsToMeasureNext } from '../sharing/sets-to-measure-next.ts';
import type { ShareMatrix } from '../sharing/share-matrix.ts';
import { portAdditions } from '../tables/port-additions.ts';
import { portAnswers } from '../tables/port-answers.ts';
import { portSteps } from '../tables/port-steps.ts';
import { sharedLoad } from '../tables/shared-load.ts';
import type { TableDeclaration } from '../tables/table-declaration.ts';
import type { Table } from '../tables/table.ts';
import { fold } from './fold.ts';
import { matrixSentence } from './plug-rows.ts';
import { fallsView, matrixKey, shareMatrixView } from './port-shares.ts';
import { interruptionSentence } from './share-answers.ts';
import type { SheetZone } from './sheet-zone.ts';
import { tableView } from './table-view.ts';
import { counted } from '../units/counted.ts';
import { sentence } from './words.ts';

/** Rows that stand open of a table that goes from the largest to the smallest, and most that stand behind the line under it. */
const LARGEST = 5;
const MOST_ROWS = 40;

/** Tables under the matrix, in their order. */
const UNDER_MATRIX: readonly TableDeclaration[] = [portSteps, portAnswers, portAdditions, sharedLoad];

/** The zone of the port shares: matrix, each port alone and in company, what falls, test loads. null with fewer than two ports. */
export function shareZone(sheet: PreparedSheet): SheetZone | null {
  const { entry, derived } = sheet;
  const matrix = derived.shares;
  if (matrix === null || matrix.ports.length < 2) return null;
  const tables = UNDER_MATRIX.filter(({ id }) => !sheet.placed.includes(id)).flatMap(
    (declaration) => declaration.build({ entry, derived }) ?? [],
  );
  const drawn = isAnyKnown(matrix) && !sheet.placed.includes('port-share');
  if (!drawn && tables.length === 0) return null;
  const side = [
    `<p>${escapeText(matrixSentence(matrix))}</p>`,
    `<p>${escapeText(capacitySentence(capacityOf(entry)))}</p>`,
    `<p>${escapeText(interruptionSentence(readerAnswers(matrix, entry)))}</p>`,
    drawn ? fallsView(matrix, entry) : '',
    measureNext(matrix),
    drawn ? `<p class="note ruled">${escapeText(matrixKey(matrix, entry))}</p>` : '',
  ];
  return {
    title: 'Port shares',
    layout: 'side',
    side: side.join(''),
    matter: (drawn ? shareMatrixView(entry, matrix) : '') + tables.map((table) => underMatrix(table)).join(''),
  };
}

function isAnyKnown({ counts }: ShareMatrix): boolean {
  return counts.known + counts.implied > 0;
}

function underMatrix(table: Table): string {
  const html = (one: Table): string => tableView(one, { caption: 'shown' });
  const all = rowCount(table);
  if (all === 0) return `<p class="note under-matrix"><b>${escapeText(table.title)}.</b> ${sentence(table.caption)}</p>`;
  if (table.id === sharedLoad.id)
    return `<div class="under-matrix">${fold(`<b>${counted(all, 'test load')}</b> of shared ports: ${escapeText(groupWords(table))}`, html(table))}</div>`;
  const open = table.id === portAdditions.id ? LARGEST : MOST_ROWS;
  if (all <= open + 2) return `<div class="under-matrix">${html(table)}</div>`;
  const left = all - open - MOST_ROWS;
  const cut = left > 0 ? [`${counted(left, 'further row is', 'further rows are')} not shown.`] : [];
  const rest = { ...rowsFrom(table, open, open + MOST_ROWS), title: `${table.title}, the rest`, notes: cut };
  const what = table.id === portAdditions.id ? 'further fall' : 'further row';
  return `<div class="under-matrix">${html(rowsFrom(table, 0, open))}${fold(`<b>${counted(all - open, what)}</b>${table.id === portAdditions.id ? ', none larger' : ''}`, tableView(rest))}</div>`;
}

function rowCount(table: Table): number {
  return table.groups.reduce((sum, group) => sum + group.rows.length, 0);
}

/** "D = 0.53 at the highest voltage; …": what the groups are called. */
function groupWords(table: Table): string {
  return table.groups.flatMap(({ title }) => (title === null ? [] : [title.charAt(0).toLowerCase() + title.slice(1)])).join('; ');
}

/** The same table with some of its rows; groups that have none of them go. */
function rowsFrom(table: Table, from: number, to: number): Table {
  let at = 0;
  const groups = table.groups.map((group) => {
    const rows = group.rows.slice(Math.max(0, from - at), Math.max(0, to - at));
    at += group.rows.length;
    return { ...group, rows };
  });
  return { ...table, groups: groups.filter(({ rows }) => rows.length > 0) };
}

/** Which sets would complete the matrix, fewest first, and which orders of plugging are open. */
function measureNext(matrix: ShareMatrix): string {
  const next = setsToMeasureNext(matrix);
  const sets = next
    .slice(0, 8)
    .map(
      ({ key, settles }) =>
        `<li><b class="mono">${escapeText(key)}</b>${settles.length === 1 ? '' : ` settles ${escapeText(settles.slice(1).join(', '))} too`}</li>`,
    );
  const more = next.length > 8 ? `<li>and ${next.length - 8} more</li>` : '';
  const orders = knownOrders(matrix)
    .filter(({ known, all }) => known < all)
    .map(({ key, known, all }) => `<li><b class="mono">${escapeText(key)}</b> in another order: ${known} of ${all} known</li>`);
  const items = [...sets, more, ...orders].join('');
  return items === '' ? '' : `<h3>Measure next</h3><ul class="lines">${items}</ul>`;
}
