import { escapeText, percent } from '../markup.ts';
import type { CalloutItem } from './callout-item.ts';
import { FIGURES_ACROSS, LETTERS_DOWN, type PictureSize } from './frame-size.ts';
import { distance } from './segment.ts';
import { spreadPoints } from './spread-points.ts';

/** A length drawn into a photo. */
export interface DrawnLength {
  /** "creepage T1 6.4 mm". */
  readonly label: string;
  /** The known length that the others are measured by. */
  readonly isScale: boolean;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** Width of the picture on the narrowest page, for which the circles on the parts are kept apart. */
const NARROW = 300;
const NEAR_RADIUS = 12;

/**
 * What lies on a photo at any size, in shares of its width and height: the zones as targets of links (`photo-3-B4`), the spots of the parts,
 * the lengths as dimension lines. The arrows `dim-end` are defined once a page by `dimensionArrows`.
 */
export function photoOver(photo: string, items: readonly CalloutItem[], lengths: readonly DrawnLength[]): string {
  const zones = LETTERS_DOWN.flatMap((letter, row) =>
    Array.from({ length: FIGURES_ACROSS }, (_, column) => zoneRect(`${photo}-${letter}${column + 1}`, column, row)),
  );
  const spots = items.map(
    ({ anchor, number, x, y }) =>
      `<circle class="ph-spot" id="${anchor}" data-item="${number}" cx="${percent(x)}" cy="${percent(y)}" r="16"/>`,
  );
  return `<svg class="ph-over" aria-hidden="true">${zones.join('')}${spots.join('')}${lengths.map(dimension).join('')}</svg>`;
}

/** Arrow head of the dimension lines in photos: 9 × 4.8 px. */
export function dimensionArrows(): string {
  return '<svg class="ph-defs" aria-hidden="true"><defs><marker id="figure-dim-end" viewBox="0 0 9 4.8" refX="9" refY="2.4" markerWidth="9" markerHeight="4.8" markerUnits="userSpaceOnUse" orient="auto-start-reverse"><path d="M9 2.4L0 0V4.8Z"/></marker></defs></svg>';
}

/** What a narrow page draws instead of the circles around: zone letters above and at the left, numbers on the parts. */
export function photoNear(picture: PictureSize, items: readonly CalloutItem[], label: string): string {
  const size = { width: NARROW, height: (NARROW * picture.height) / picture.width };
  const field = { from: { x: NEAR_RADIUS, y: NEAR_RADIUS }, to: { x: size.width - NEAR_RADIUS, y: size.height - NEAR_RADIUS } };
  const wanted = items.map(({ x, y }) => ({ x: x * size.width, y: y * size.height }));
  const places = spreadPoints(wanted, 2 * NEAR_RADIUS + 1, field);
  const marks = items.map((item, index) => {
    const place = places[index] ?? { x: 0, y: 0 };
    const [cx, cy] = [percent(place.x / size.width), percent(place.y / size.height)];
    const [x, y] = [percent(item.x), percent(item.y)];
    const isMoved = distance(place, wanted[index] ?? place) > 3;
    const line = isMoved
      ? `<line class="ph-halo" x1="${x}" y1="${y}" x2="${cx}" y2="${cy}"/><line class="ph-leader" x1="${x}" y1="${y}" x2="${cx}" y2="${cy}"/>`
      : '';
    return (
      `${line}<a class="ph-item" href="#${item.rowAnchor}" data-item="${item.number}" aria-label="${item.number}, ${escapeText(item.title)}">` +
      `<circle cx="${cx}" cy="${cy}" r="${NEAR_RADIUS}"/><text x="${cx}" y="${cy}" dy="4.5">${item.number}</text></a>`
    );
  });
  return `<svg class="ph-near" role="group" aria-label="${escapeText(label)}">${nearLetters()}${marks.join('')}</svg>`;
}

function nearLetters(): string {
  const figures = Array.from(
    { length: FIGURES_ACROSS },
    (_, index) => `<text x="${percent((index + 0.5) / FIGURES_ACROSS)}" y="-7">${index + 1}</text>`,
  );
  const letters = LETTERS_DOWN.map(
    (letter, index) => `<text x="-11" y="${percent((index + 0.5) / LETTERS_DOWN.length)}" dy="5">${letter}</text>`,
  );
  return `<g class="ph-letters" aria-hidden="true">${figures.join('')}${letters.join('')}</g>`;
}

function zoneRect(id: string, column: number, row: number): string {
  const [width, height] = [1 / FIGURES_ACROSS, 1 / LETTERS_DOWN.length];
  return `<rect class="ph-zone" id="${id}" x="${percent(column * width)}" y="${percent(row * height)}" width="${percent(width)}" height="${percent(height)}"/>`;
}

function dimension({ label, isScale, from, to }: DrawnLength): string {
  const ends = `x1="${percent(from[0])}" y1="${percent(from[1])}" x2="${percent(to[0])}" y2="${percent(to[1])}"`;
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const [dx, dy] = Math.abs(to[0] - from[0]) >= Math.abs(to[1] - from[1]) ? [0, -8] : [10, 5];
  const anchor = dx === 0 ? 'mid' : 'start';
  return (
    `<g class="ph-dim${isScale ? ' ph-scale' : ''}"><line class="ph-halo" ${ends}/>` +
    `<line class="ph-dim-line" ${ends} marker-start="url(#figure-dim-end)" marker-end="url(#figure-dim-end)"/>` +
    `<text class="${anchor}" x="${percent(x)}" y="${percent(y)}" dx="${dx}" dy="${dy}">${escapeText(label)}</text></g>`
  );
}
