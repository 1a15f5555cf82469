import { CIRCLE_OFFSET, FIGURES_ACROSS, LETTERS_DOWN, type PictureSize } from './frame-size.ts';
import type { Point } from './segment.ts';

/** An edge of the picture that circles can stand along. */
export type Side = 'top' | 'bottom' | 'left' | 'right';

export const SIDES: readonly Side[] = ['left', 'right', 'top', 'bottom'];

/** Circles along one edge: 38 px and a gap. */
export const CIRCLES_APART = 41;

/** How far a dot may move along an edge so that its leader goes straight. */
export const MOST_SHIFT = 9;

/** How near a leader may come to the middle of a zone letter: half a letter, half a line, the halo and a hair. */
const LETTER_CLEAR = 10;

export function isUpright(side: Side): boolean {
  return side === 'top' || side === 'bottom';
}

/** Length of an edge. */
export function edgeLength(side: Side, { width, height }: PictureSize): number {
  return isUpright(side) ? width : height;
}

/** Where a leader at `lane` along the edge goes through it. */
export function gateAt(side: Side, lane: number, { width, height }: PictureSize): Point {
  if (isUpright(side)) return { x: lane, y: side === 'top' ? 0 : height };
  return { x: side === 'left' ? 0 : width, y: lane };
}

/** Middle of the circle at `lane` along the edge. */
export function circleAt(side: Side, lane: number, { width, height }: PictureSize): Point {
  if (isUpright(side)) return { x: lane, y: side === 'top' ? -CIRCLE_OFFSET : height + CIRCLE_OFFSET };
  return { x: side === 'left' ? -CIRCLE_OFFSET : width + CIRCLE_OFFSET, y: lane };
}

/** Whether a leader at `lane` passes beside the zone letters of the edge. */
export function isClearOfLetters(side: Side, lane: number, picture: PictureSize): boolean {
  const fields = isUpright(side) ? FIGURES_ACROSS : LETTERS_DOWN.length;
  const field = edgeLength(side, picture) / fields;
  const from = lane / field;
  return Math.abs((from - Math.floor(from) - 0.5) * field) >= LETTER_CLEAR - 1e-9;
}
