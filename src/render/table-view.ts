import { escapeText } from '../figures/markup.ts';
import { scrollRegion } from './scroll-region.ts';
import { mark } from '../figures/mark.ts';
import { shareBar } from '../figures/share-bar.ts';
import { stageGlyph } from '../figures/stage-glyph.ts';
import type { Cell, Column, Row, RowGroup, Table } from '../tables/table.ts';
import { isMissing } from '../values/value.ts';
import { quantity } from './quantity.ts';
import { sentence } from './words.ts';

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
  const captionText = `<b>${escapeText(table.title)}.</b> ${sentence(table.caption)}`;
  const caption = `<caption${look.caption === 'shown' ? '' : ' class="vh"'}>${captionText}</caption>`;
  const head = columns
    .map((column) => `<th scope="col"${classes(column.align === 'end' && 'n', isUnder(column) && 'at-width')}>${columnHead(column)}</th>`)
    .join('');
  const body = table.groups.map((group) => groupRows(group, columns, prefix)).join('');
  const html = `<table class="data">${caption}<thead><tr>${head}</tr></thead>${body}</table>`;
  const notes =
    table.notes.length === 0 ? '' : `<div class="note under">${table.notes.map((note) => `<p>${sentence(note)}</p>`).join('')}</div>`;
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
  const under = underHead(row, columns);
  const cells = row.cells.map((cell, index) => tableCell(cell, columns[index], index === 0, under)).join('');
  return `<tr id="${escapeText(prefix + row.id)}">${cells}</tr>`;
}

/** What a phone has no column for, in words under the head of the row: "Air 24 °C · At 115 V, 100 %". */
function underHead(row: Row, columns: readonly Column[]): string {
  const said = columns.flatMap((column, index) => {
    const cell = row.cells[index];
    if (!isUnder(column) || cell === undefined || cell.kind === 'none' || cell.kind === 'missing') return [];
    return [`${escapeText(column.head)} ${cellContent(cell, { ...column, unit: null }, column.unit)}`];
  });
  // What belongs together stays on one line where it has room.
  const pieces = said.map((words, index) => `<span>${words}${index < said.length - 1 ? ' ·' : ''}</span>`);
  return said.length === 0 ? '' : `<span class="under-head">${pieces.join(' ')}</span>`;
}

function isUnder(column: Column | undefined): boolean {
  return column?.phone === 'under';
}

/** A class attribute of those names that hold; nothing where none does. */
function classes(...names: readonly (string | false)[]): string {
  const held = names.filter((name) => name !== false);
  return held.length === 0 ? '' : ` class="${held.join(' ')}"`;
}

/** One cell; the first of a row is its head and stays in view on a phone. */
function tableCell(cell: Cell, column: Column | undefined, first: boolean, under: string): string {
  const end = column?.align === 'end' && 'n';
  if (first) {
    const plain = cell.kind === 'text' && cell.mono !== true && 'plain';
    return `<th scope="row"${end === 'n' ? classes('n') : classes('ref', plain)}>${cellContent(cell, column)}${under}</th>`;
  }
  const isAbsent = cell.kind === 'missing' || (cell.kind === 'value' && isMissing(cell.value));
  const face = isAbsent ? 'why' : cell.kind === 'text' && cell.mono === true && 'm1';
  return `<td${classes(face, end, isUnder(column) && 'at-width')}>${cellContent(cell, column)}</td>`;
}

/** The content of a cell; `unit` is that of a value whose column has no head here to name it. */
function cellContent(cell: Cell, column: Column | undefined, unit: string | null = null): string {
  switch (cell.kind) {
    case 'text':
      return cell.link === undefined ? sentence(cell.text) : `<a href="${escapeText(cell.link)}">${sentence(cell.text)}</a>`;
    case 'mark':
      return `<span class="mk ${cell.mark}">${mark(cell.mark)}${sentence(cell.text)}</span>`;
    case 'none':
      return '<span class="dash0" aria-hidden="true"></span><span class="vh">not in use</span>';
    case 'missing':
      return `– ${escapeText(cell.reason)}`;
    case 'value':
      return isMissing(cell.value)
        ? `– ${escapeText(cell.value.reason)}`
        : valueContent(unit === null || cell.unit !== undefined ? cell : { ...cell, unit }, column);
  }
}

function valueContent(cell: Extract<Cell, { kind: 'value' }>, column: Column | undefined): string {
  const unit = cell.unit ?? column?.unit ?? undefined;
  const inHead = column?.unit !== null && column?.unit !== undefined && (cell.unit === undefined || cell.unit === column.unit);
  const text = quantity(cell.value, {
    ...(unit === undefined ? {} : { unit }),
    ...(cell.decimals === undefined ? {} : { decimals: cell.decimals }),
    ...(cell.link === undefined ? {} : { link: cell.link }),
    bare: inHead,
  });
  const suffix = cell.suffix === undefined ? '' : ` <span class="suffix">${sentence(cell.suffix)}</span>`;
  return `${text}${suffix}${cell.bar === undefined ? '' : shareBar(cell.bar)}`;
}
