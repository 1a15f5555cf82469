import { percent } from '../markup.ts';
import type { CalloutItem } from './callout-item.ts';
import { FIGURES_ACROSS, LETTERS_DOWN } from './frame-size.ts';
import type { DrawnLength } from './length-label.ts';

/**
 * What lies on a photo at any size, in shares of its width and height: the zones as targets of links (`photo-3-B4`), the spots of the parts,
 * the lengths as dimension lines, whose labels stand in the drawings for wide and for narrow pages. The arrows `dim-end` are defined once a page by `dimensionArrows`.
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

function zoneRect(id: string, column: number, row: number): string {
  const [width, height] = [1 / FIGURES_ACROSS, 1 / LETTERS_DOWN.length];
  return `<rect class="ph-zone" id="${id}" x="${percent(column * width)}" y="${percent(row * height)}" width="${percent(width)}" height="${percent(height)}"/>`;
}

function dimension({ isScale, from, to }: DrawnLength): string {
  const ends = `x1="${percent(from[0])}" y1="${percent(from[1])}" x2="${percent(to[0])}" y2="${percent(to[1])}"`;
  return (
    `<g class="ph-dim${isScale ? ' ph-scale' : ''}"><line class="ph-halo" ${ends}/>` +
    `<line class="ph-dim-line" ${ends} marker-start="url(#figure-dim-end)" marker-end="url(#figure-dim-end)"/></g>`
  );
}
