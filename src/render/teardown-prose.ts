import { escapeText } from '../figures/markup.ts';
import { placeProse } from '../markdown/place-prose.ts';
import type { PreparedSheet } from '../corpus/prepared.ts';
import { offersView } from './offers.ts';
import { partsView } from './parts.ts';
import { fallsView, matrixKey, shareMatrixView } from './port-shares.ts';
import { stressView } from './stress.ts';
import { tableView } from './table-view.ts';

/** Headings of the text as a list, where there are enough to need one. */
export function contents(sheet: PreparedSheet): string {
  const top = sheet.headings.filter((heading) => heading.depth <= 2);
  if (top.length < 3) return '';
  return `<ul class="contents">${top.map((heading) => `<li><a href="#${escapeText(heading.id)}">${escapeText(heading.text)}</a></li>`).join('')}</ul>`;
}

/** The author's text with the tables where the author placed them; matrix, stress and parts keep their own drawing. */
export function prose(sheet: PreparedSheet): string {
  return placeProse(sheet.html)
    .map((piece) => (piece.kind === 'html' ? piece.html : `<div class="placed">${placedTable(sheet, piece.id)}</div>`))
    .join('');
}

function placedTable(sheet: PreparedSheet, id: string): string {
  const { entry, derived } = sheet;
  if (id === 'port-share' && derived.shares !== null)
    return (
      shareMatrixView(entry, derived.shares) +
      `<p class="note under">${escapeText(matrixKey(derived.shares, entry))}</p>${sheet.placed.includes('port-falls') ? '' : fallsView(derived.shares, entry)}`
    );
  if (id === 'port-falls' && derived.shares !== null) return fallsView(derived.shares, entry);
  if (id === 'stress' && derived.stress.length > 0) return stressView(derived);
  if (id === 'parts' && entry.parts.length > 0) return partsView(entry, derived);
  if (id === 'offers' && offersView(entry) !== '') return offersView(entry);
  const table = sheet.tables.find((candidate) => candidate.id === id);
  return table === undefined ? '' : tableView(table, { caption: 'shown' });
}
