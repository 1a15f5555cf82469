import { escapeText } from '../../figures/markup.ts';
import type { PreparedSheet } from '../../pipeline/prepared.ts';
import { capacityOf } from '../../sharing/capacity-of.ts';
import { capacitySentence } from '../../sharing/capacity-words.ts';
import { knownOrders } from '../../sharing/known-orders.ts';
import { readerAnswers } from '../../sharing/reader-answers.ts';
import { setsToMeasureNext } from '../../sharing/sets-to-measure-next.ts';
import type { ShareMatrix } from '../../sharing/share-matrix.ts';
import { portAdditions } from '../../tables/port-additions.ts';
import { portAnswers } from '../../tables/port-answers.ts';
import { portSteps } from '../../tables/port-steps.ts';
import { sharedLoad } from '../../tables/shared-load.ts';
import type { TableDeclaration } from '../../tables/table-declaration.ts';
import type { Table } from '../../tables/table.ts';
import { matrixSentence } from './plug-rows.ts';
import { fallsView, matrixKey, shareMatrixView } from './port-shares.ts';
import { interruptionSentence } from './share-answers.ts';
import type { SheetZone } from './sheet-zone.ts';
import { tableView } from './table-view.ts';
import { counted } from './words.ts';

/** Rows that the zone shows of a long table, and how many more are shown rather than counted. */
const MOST_ROWS = 16;
const FEW_MORE = 4;

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
    matter: (drawn ? shareMatrixView(entry, matrix) : '') + tables.map(underMatrix).join(''),
  };
}

function isAnyKnown({ counts }: ShareMatrix): boolean {
  return counts.known + counts.implied > 0;
}

function underMatrix(table: Table): string {
  const all = table.groups.reduce((sum, group) => sum + group.rows.length, 0);
  const shown = all > MOST_ROWS + FEW_MORE ? MOST_ROWS : all;
  let left = shown;
  const groups = table.groups.map((group) => {
    const rows = group.rows.slice(0, left);
    left -= rows.length;
    return { ...group, rows };
  });
  const more = all > shown ? [`${counted(all - shown, 'further row is', 'further rows are')} not shown.`] : [];
  return `<div class="under-matrix">${tableView({ ...table, groups, notes: [...more, ...table.notes] }, { caption: 'shown' })}</div>`;
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
