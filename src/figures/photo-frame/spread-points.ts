import { distance, type Point } from './segment.ts';

/** Steps of the search around a point: rings of growing radius. */
const RINGS = 60;
const DIRECTIONS = 16;

/**
 * The points moved apart until no two are nearer than `apart`, each as little as possible and none out of the field; the earlier of two
 * keeps its place. Where a field has no room left, a point stays where it is.
 */
export function spreadPoints(
  points: readonly Point[],
  apart: number,
  field: { readonly from: Point; readonly to: Point },
): readonly Point[] {
  const placed: Point[] = [];
  for (const point of points) placed.push(freePlace(clamped(point, field), placed, apart, field));
  return placed;
}

function freePlace(wanted: Point, taken: readonly Point[], apart: number, field: { readonly from: Point; readonly to: Point }): Point {
  const isFree = (point: Point): boolean => taken.every((other) => distance(point, other) >= apart - 1e-9);
  if (isFree(wanted)) return wanted;
  for (let ring = 1; ring <= RINGS; ring += 1) {
    for (let step = 0; step < DIRECTIONS; step += 1) {
      const angle = ((step + (ring % 2) / 2) * 2 * Math.PI) / DIRECTIONS;
      const radius = (ring * apart) / 4;
      const point = clamped({ x: rounded(wanted.x + radius * Math.cos(angle)), y: rounded(wanted.y + radius * Math.sin(angle)) }, field);
      if (isFree(point)) return point;
    }
  }
  return wanted;
}

function clamped({ x, y }: Point, { from, to }: { readonly from: Point; readonly to: Point }): Point {
  return { x: Math.min(to.x, Math.max(from.x, x)), y: Math.min(to.y, Math.max(from.y, y)) };
}

function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}
