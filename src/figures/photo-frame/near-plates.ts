import { boxAround, boxesAreNear, crossesBox, type Box } from './box.ts';
import type { PictureSize } from './frame-size.ts';
import { distance, segmentsMeet, type Point, type Segment } from './segment.ts';
import { shortestPairing } from './shortest-pairing.ts';

/** Type of the numbers, in px, and the width of a figure in parts of it. */
const TYPE = 13;
const FIGURE_WIDTH = 0.5;
/** From one ring of the search to the next, in px, and the directions looked into. */
const RING = 4;
const DIRECTIONS = 24;
/** Half of what a dot takes up. */
const DOT = 3;
/** A mark that stands further from its part has a leader. */
export const ON_PART = 3;

/** Size of the plates of numbers that have so many figures. */
export function plateSize(figures: number): PictureSize {
  return { width: Math.ceil(figures * TYPE * FIGURE_WIDTH) + 5, height: TYPE + 3 };
}

const ORIGIN: Point = { x: 0, y: 0 };

/** What stands already: plates, leaders, and all dots. */
interface Standing {
  readonly plates: { readonly box: Box; readonly leader: Segment | null }[];
  readonly dots: readonly Point[];
}

/**
 * Numbers on small plates: each on its part where it has room, else beside it at the end of a leader. Plates never overlap while the picture
 * has room for all; as far as there is room, none covers the dot of another, no leader goes under a plate and no two leaders meet. Lonely
 * parts come first, so that those in a crowd step aside around them. Where leaders cross all the same, the places are shared out anew so
 * that the leaders are shortest in all: of two that cross, the other two ends would be shorter.
 *
 * @returns The middle of each plate, in the order of the dots.
 */
export function placePlates(dots: readonly Point[], plate: PictureSize, picture: PictureSize): readonly Point[] {
  const standing: Standing = { plates: [], dots };
  const middles = [...dots];
  for (const index of lonelyFirst(dots, 2 * plate.width)) {
    const middle = placeOf(index, standing, plate, picture);
    middles[index] = middle;
    const dot = dots[index] ?? middle;
    standing.plates.push({ box: boxAround(middle, plate.width, plate.height), leader: leaderOf(dot, middle) });
  }
  return someLeadersMeet(standing) ? sharedOutAnew(dots, middles) : middles;
}

function someLeadersMeet({ plates }: Standing): boolean {
  const leaders = plates.flatMap(({ leader }) => leader ?? []);
  return leaders.some((one, at) => leaders.slice(at + 1).some((other) => segmentsMeet(one, other)));
}

function sharedOutAnew(dots: readonly Point[], middles: readonly Point[]): readonly Point[] {
  const cost = (dot: number, middle: number): number => distance(dots[dot] ?? ORIGIN, middles[middle] ?? ORIGIN);
  return shortestPairing(dots.length, middles.length, cost).map((at) => middles[at] ?? ORIGIN);
}

function lonelyFirst(dots: readonly Point[], within: number): readonly number[] {
  const neighbours = dots.map((dot) => dots.filter((other) => distance(dot, other) < within).length);
  return dots.map((_, index) => index).sort((a, b) => (neighbours[a] ?? 0) - (neighbours[b] ?? 0) || a - b);
}

function placeOf(index: number, standing: Standing, plate: PictureSize, picture: PictureSize): Point {
  const dot = standing.dots[index] ?? ORIGIN;
  const free = placesAround(dot, plate, picture).filter((point) => overlapsNone(point, standing, plate));
  const open = free.filter((point) => coversNoOther(point, index, standing, plate));
  return open.find((point) => isClear(point, dot, standing, plate)) ?? open[0] ?? free[0] ?? dot;
}

/** The dot itself and rings around it, the nearest first, none so that the plate leaves the picture. */
function placesAround(dot: Point, plate: PictureSize, picture: PictureSize): readonly Point[] {
  const rings = Math.ceil(Math.max(picture.width, picture.height) / RING);
  const held = (x: number, y: number): Point => ({
    x: rounded(Math.min(picture.width - plate.width / 2, Math.max(plate.width / 2, x))),
    y: rounded(Math.min(picture.height - plate.height / 2, Math.max(plate.height / 2, y))),
  });
  const steps = Array.from({ length: rings * DIRECTIONS }, (_, step) => {
    const angle = ((step % DIRECTIONS) * 2 * Math.PI) / DIRECTIONS;
    const radius = (Math.floor(step / DIRECTIONS) + 1) * RING;
    return held(dot.x + radius * Math.cos(angle), dot.y + radius * Math.sin(angle));
  });
  return [held(dot.x, dot.y), ...steps];
}

function overlapsNone(point: Point, { plates }: Standing, plate: PictureSize): boolean {
  const box = boxAround(point, plate.width, plate.height);
  return plates.every((other) => !boxesAreNear(box, other.box, 0));
}

function coversNoOther(point: Point, index: number, { dots }: Standing, plate: PictureSize): boolean {
  const box = boxAround(point, plate.width, plate.height);
  return dots.every((other, at) => at === index || !boxesAreNear(box, boxAround(other, 2 * DOT, 2 * DOT), 0));
}

function isClear(point: Point, dot: Point, { plates }: Standing, plate: PictureSize): boolean {
  const box = boxAround(point, plate.width, plate.height);
  const leader = leaderOf(dot, point);
  return plates.every(
    (other) =>
      (other.leader === null || !crossesBox(other.leader, box)) &&
      (leader === null || (!crossesBox(leader, other.box) && (other.leader === null || !segmentsMeet(leader, other.leader)))),
  );
}

function leaderOf(dot: Point, middle: Point): Segment | null {
  return distance(dot, middle) > ON_PART ? { from: dot, to: middle } : null;
}

function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}
