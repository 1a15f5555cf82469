import { escapeText } from '../figures/markup.ts';
import { scrollRegion } from './scroll-region.ts';
import { mark } from '../figures/mark.ts';
import { shareBar } from '../figures/share-bar.ts';
import { stageGlyph } from '../figures/stage-glyph.ts';
import type { Cell, Column, Row, RowGroup, Table } from '../tables/table.ts';
import { isMissing } from '../values/value.ts';
import { quantity } from './quantity.ts';

/** How a table is drawn. */
export interface TableLook {
  /** Show title and caption above it; else they are there for readers of text only. */
  readonly caption?: 'shown' | 'hidden';
  /** Prefix of the row anchors, so that two tables of a page do not share one. */
  readonly prefix?: string;
}

/** Most columns that a phone can hold without scrolling sideways. */
const NARROW = 4;

/** A derived table as HTML: groups, numbers right on their decimal, marks, missing with its reason; wide ones scroll in a region. */
export function tableView(table: Table, look: TableLook = {}): string {
  const { columns } = table;
  const prefix = look.prefix ?? `${table.id}-`;
  const captionText = `<b>${escapeText(table.title)}.</b> ${escapeText(table.caption)}`;
  const caption = `<caption${look.caption === 'shown' ? '' : ' class="vh"'}>${captionText}</caption>`;
  const head = columns.map((column) => `<th scope="col"${column.align === 'end' ? ' class="n"' : ''}>${columnHead(column)}</th>`).join('');
  const body = table.groups.map((group) => groupRows(group, columns, prefix)).join('');
  const html = `<table class="data">${caption}<thead><tr>${head}</tr></thead>${body}</table>`;
  const notes =
    table.notes.length === 0 ? '' : `<div class="note under">${table.notes.map((note) => `<p>${escapeText(note)}</p>`).join('')}</div>`;
  const region = columns.length > NARROW ? scrollRegion(table.title, html) : html;
  return region + notes;
}

function columnHead(column: Column): string {
  return `${escapeText(column.head)}${column.unit === null || column.unit === '1' ? '' : ` ${escapeText(column.unit)}`}`;
}

function groupRows(group: RowGroup, columns: readonly Column[], prefix: string): string {
  const count = group.rows.length;
  const title =
    group.title === null
      ? ''
      : `<tr class="grp"><th colspan="${columns.length}" scope="rowgroup"><span>${group.glyph === null ? '' : stageGlyph(group.glyph)}<b>${escapeText(group.title)}</b></span></th></tr>`;
  return count === 0 && group.title === null
    ? ''
    : `<tbody>${title}${group.rows.map((row) => tableRow(row, columns, prefix)).join('')}</tbody>`;
}

function tableRow(row: Row, columns: readonly Column[], prefix: string): string {
  const cells = row.cells.map((cell, index) => tableCell(cell, columns[index], index === 0)).join('');
  return `<tr id="${escapeText(prefix + row.id)}">${cells}</tr>`;
}

/** One cell; the first of a row is its head and stays in view on a phone. */
function tableCell(cell: Cell, column: Column | undefined, first: boolean): string {
  const end = column?.align === 'end';
  if (first && end) return `<th scope="row" class="n">${cellContent(cell, column)}</th>`;
  if (first)
    return `<th scope="row" class="ref${cell.kind === 'text' && cell.mono !== true ? ' plain' : ''}">${cellContent(cell, column)}</th>`;
  if (cell.kind === 'missing' || (cell.kind === 'value' && isMissing(cell.value)))
    return `<td class="why${end ? ' n' : ''}">${cellContent(cell, column)}</td>`;
  if (cell.kind === 'text' && cell.mono === true) return `<td class="m1${end ? ' n' : ''}">${cellContent(cell, column)}</td>`;
  return `<td${end ? ' class="n"' : ''}>${cellContent(cell, column)}</td>`;
}

function cellContent(cell: Cell, column: Column | undefined): string {
  switch (cell.kind) {
    case 'text':
      return cell.link === undefined ? escapeText(cell.text) : `<a href="${escapeText(cell.link)}">${escapeText(cell.text)}</a>`;
    case 'mark':
      return `<span class="mk ${cell.mark}">${mark(cell.mark)}${escapeText(cell.text)}</span>`;
    case 'none':
      return '<span class="dash0" aria-hidden="true"></span><span class="vh">not in use</span>';
    case 'missing':
      return `– ${escapeText(cell.reason)}`;
    case 'value':
      return isMissing(cell.value) ? `– ${escapeText(cell.value.reason)}` : valueContent(cell, column);
  }
}

function valueContent(cell: Extract<Cell, { kind: 'value' }>, column: Column | undefined): string {
  const unit = cell.unit ?? column?.unit ?? undefined;
  const inHead = column?.unit !== null && column?.unit !== undefined && (cell.unit === undefined || cell.unit === column.unit);
  const text = quantity(cell.value, {
    ...(unit === undefined ? {} : { unit }),
    ...(cell.decimals === undefined ? {} : { decimals: cell.decimals }),
    bare: inHead,
  });
  const suffix = cell.suffix === undefined ? '' : ` <span class="suffix">${escapeText(cell.suffix)}</span>`;
  return `${text}${suffix}${cell.bar === undefined ? '' : shareBar(cell.bar)}`;
}
