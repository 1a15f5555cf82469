import { compareSheets, type ComparedRow } from '../corpus/compare-sheets.ts';
import type { ComparisonRow } from '../corpus/comparison-row.ts';
import type { NumberColumn } from '../corpus/finder-query.ts';
import type { FinderRow } from '../corpus/finder-row.ts';
import { horizontalDimension } from '../figures/dimension-line.ts';
import { escapeText, px } from '../figures/markup.ts';
import { miniPort } from '../figures/mini-front.ts';
import { offersOverlay } from '../figures/offers-overlay.ts';
import { glyphChain } from '../figures/stage-glyph.ts';
import { placeStrip, ratioStrip, type StripMark } from '../figures/place-strip.ts';
import type { ComparedSheet } from './compared-sheet.ts';
import { markWith } from './mark.ts';
import { scrollRegion } from './scroll-region.ts';
import { sentence } from './words.ts';

/** Columns of the register behind the rows that have a strip. */
const STRIP_COLUMNS: Readonly<Record<string, NumberColumn>> = {
  rated: 'watts',
  volume: 'volume',
  mass: 'mass',
  density: 'density',
  'specific-power': 'specific',
  efficiency: 'efficiency',
};
const LOGARITHMIC: readonly string[] = ['rated', 'volume', 'mass'];

/** What the reader sees of a comparison: all rows or those that differ, and rows put away. */
export interface ComparisonView {
  readonly onlyDiffering: boolean;
  readonly hidden: ReadonlySet<string>;
}

/** Two to four sheets side by side, with their places among all sheets, and their offers on one chart. */
export function comparisonMarkup(sheets: readonly ComparedSheet[], all: readonly FinderRow[], view: ComparisonView): string {
  const groups = compareSheets(sheets.map((sheet) => sheet.rows));
  const width = sheets.length + 1;
  const bodies = groups.map(({ group, rows }) => {
    const shown = rows.filter((row) => !view.hidden.has(row.id) && (!view.onlyDiffering || row.differs));
    if (shown.length === 0) return '';
    return `<tbody><tr class="grp"><th colspan="${String(width)}" scope="rowgroup"><b>${escapeText(group)}</b></th><td class="among"></td></tr>${shown.map((row) => rowMarkup(row, sheets, all)).join('')}</tbody>`;
  });
  const heads = headCells(sheets);
  const table = `<table class="compared compared-${String(sheets.length)}"><caption class="vh">Devices side by side</caption><thead><tr><th scope="col"><span class="vh">Row</span></th>${heads}<th scope="col" class="among">Place among ${String(all.length)} sheets, low to high</th></tr></thead>${bodies.join('')}</table>`;
  return `${scrollRegion('Devices side by side', table)}${overlay(sheets)}`;
}

/** "a", "b", "c", "d". */
export function letterOf(index: number): string {
  return 'abcd'.charAt(index);
}

function rowMarkup(row: ComparedRow, sheets: readonly ComparedSheet[], all: readonly FinderRow[]): string {
  const cells = row.cells.map((cell, index) =>
    cellMarkup(cell, row.better === index, row.id === 'stages' ? glyphChain(sheets[index]?.glyphs ?? []) : ''),
  );
  return `<tr class="${row.differs ? 'differs' : 'alike'}" data-row="${escapeText(row.id)}"><th scope="row">${escapeText(row.label)}</th>${cells.join('')}<td class="among">${row.differs ? stripOf(row, all) : '<span class="note">alike</span>'}</td></tr>`;
}

function cellMarkup(cell: ComparisonRow | null, isBetter: boolean, drawing: string): string {
  if (cell === null) return '<td class="v faded">– no such part</td>';
  const words = comparedWords(cell.text);
  const better = isBetter ? ' <span class="better">better</span>' : '';
  const shown = cell.mark === null ? words : markWith(cell.mark, ` ${words.replace(/^– /u, '')}`);
  const isMissing = cell.text.startsWith('–') && cell.mark === null;
  const basis =
    cell.better !== null && cell.mark === null && cell.basis !== '' && !isMissing
      ? `<span class="basis">${sentence(cell.basis)}</span>`
      : '';
  return `<td class="v${isMissing ? ' faded' : ''}${isBetter ? ' best' : ''}${drawing === '' ? '' : ' drawn'}">${drawing}${shown}${better}${basis}</td>`;
}

/** What is written in figures, "VLR-81C" or "31 mm", and rows of it, "88 × 60 × 31 mm". */
const FIGURES = /[^\s,·]*\d[^\s,·]*(?:\u00a0[^\s,·]+)?(?: [×+±] [^\s,·]*\d[^\s,·]*(?:\u00a0[^\s,·]+)?)*/gu;

/** Figures in their face and unbroken, rows of them broken between two; words in the face of the words: "0.94 over 0.90". */
function comparedWords(text: string): string {
  const kept = sentence(text).replaceAll(' · ', '\u00a0· ');
  return text.startsWith('–')
    ? kept
    : kept.replace(FIGURES, (figures) => `<span class="q${figures.includes(' ') ? ' wrap' : ''}">${figures}</span>`);
}

function stripOf(row: ComparedRow, all: readonly FinderRow[]): string {
  const marks = row.cells.flatMap((cell, index): readonly StripMark[] =>
    cell?.range ? [{ letter: letterOf(index), value: cell.range[1], low: cell.range[0], high: cell.range[2] }] : [],
  );
  if (marks.length === 0) return '';
  if (row.id.startsWith('stress-')) return ratioStrip(marks);
  const column = STRIP_COLUMNS[row.id];
  if (column === undefined) return '';
  return placeStrip(all.map((each) => each[column]).filter((value) => value !== null), marks, LOGARITHMIC.includes(row.id)); // prettier-ignore
}

/** Heads with the fronts at one scale. */
function headCells(sheets: readonly ComparedSheet[]): string {
  const fronts = sheets.map((sheet) => frontOf(sheet));
  const longest = Math.max(1, ...fronts.map((front) => front?.[0] ?? 0));
  const tallest = Math.max(1, ...fronts.map((front) => front?.[1] ?? 0));
  const scale = Math.min(180 / longest, 80 / tallest, 2);
  return sheets
    .map((sheet, index) => {
      const number = [sheet.number, sheet.revision].filter((piece) => piece !== null).join(' ');
      return `<th scope="col" class="device">${frontMarkup(sheet, fronts[index] ?? null, scale, [longest * scale, tallest * scale])}<span class="letter-name"><span class="ring">${letterOf(index)}</span> <a href="/teardowns/${encodeURIComponent(sheet.slug)}/">${escapeText(sheet.fullName)}</a></span><span class="mono soft">${escapeText(number)}</span></th>`;
    })
    .join('');
}

function frontOf({ outline, kind }: ComparedSheet): readonly [number, number] | null {
  if (outline === null) return null;
  const [length, , height] = outline;
  return kind === 'car charger' && height > length ? [height, length] : [length, height];
}

/** Every front is drawn on one field of one size, so that a narrow column shrinks all of them alike and the scale stays one. */
function frontMarkup(
  sheet: ComparedSheet,
  front: readonly [number, number] | null,
  scale: number,
  [longest, tallest]: readonly [number, number],
): string {
  if (front === null) return '<span class="faded front-missing">– size not known</span>';
  const [w, h] = [front[0] * scale, front[1] * scale];
  const base = tallest + 2;
  const left = longest - w + 1;
  const ports = sheet.ports.filter((port) => port.connector !== 'wireless');
  const pitch = (w - 8) / Math.max(1, ports.length);
  const drawn = ports.map((port, at) =>
    miniPort(port, left + 4 + pitch * (at + 0.5), base - h / 2, Math.min(9 * scale, pitch - 3), 'thin'),
  );
  return (
    `<svg class="fig front" aria-hidden="true" width="${px(longest + 2)}" height="${px(base + 22)}" viewBox="0 0 ${px(longest + 2)} ${px(base + 22)}">` +
    `<rect class="med" x="${px(left)}" y="${px(base - h)}" width="${px(w)}" height="${px(h)}" rx="${px(Math.min(6, h / 4))}"/>${drawn.join('')}` +
    `${horizontalDimension(left, left + w, base, base + 16, '')}</svg><span class="q front-length">${px(front[0])}\u00A0mm</span>`
  );
}

function overlay(sheets: readonly ComparedSheet[]): string {
  const devices = sheets.flatMap((sheet, index) =>
    sheet.strongestPort === null
      ? []
      : [{ letter: letterOf(index), name: sheet.name, offers: sheet.strongestPort.offers, port: sheet.strongestPort.id }],
  );
  if (devices.length < 2) return '';
  const names = devices.map((device) => `${device.letter} ${escapeText(device.name)} ${escapeText(device.port)}`).join(', ');
  return `<div class="overlay-box"><h2>Offers of the strongest port</h2><section class="overlay-scroll" tabindex="0" aria-label="Offers of the strongest port, chart">${offersOverlay(devices, 720)}</section><p class="note">${names}. Squares are fixed voltages; lines are the upper edge of a range (PPS, AVS). Letters say whose.</p></div>`;
}
