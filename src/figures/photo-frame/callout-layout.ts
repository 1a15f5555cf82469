import { bentLeaders } from './bent-leaders.ts';
import type { PictureSize } from './frame-size.ts';
import type { PlacedCallout } from './placed-callout.ts';
import type { Point } from './segment.ts';
import { spreadPoints } from './spread-points.ts';
import { straightLeaders } from './straight-leaders.ts';

/** Two dots nearer than this would read as one. */
const DOTS_APART = 12;
/** Dots stand inside the picture, whole. */
const INSET = 7;

/**
 * Circles outside the frame and their leaders: straight up or across, none crossing, none over a zone letter, no circles overlapping.
 * A dot may move by up to 9 px from its place, about one per cent of the width, which is less than a place is good for. Where a crowd
 * leaves no such drawing, every leader goes straight to a gate in the frame and bends there. What finds no place at all (more circles
 * than the edges hold) is left out: the numbers on the parts in the narrow drawing still show it.
 *
 * @param places fractions of width and height
 */
export function layoutCallouts(picture: PictureSize, places: readonly Point[]): readonly PlacedCallout[] {
  const field = { from: { x: INSET, y: INSET }, to: { x: picture.width - INSET, y: picture.height - INSET } };
  const wanted = places.map(({ x, y }) => ({ x: x * picture.width, y: y * picture.height }));
  const dots = spreadPoints(wanted, DOTS_APART, field);
  return straightLeaders(picture, dots) ?? bentLeaders(picture, dots);
}
