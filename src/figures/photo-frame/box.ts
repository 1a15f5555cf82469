import type { Point, Segment } from './segment.ts';

/** An upright rectangle in px. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The box of this size around its middle. */
export function boxAround({ x, y }: Point, width: number, height: number): Box {
  return { left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: y + height / 2 };
}

/** Whether two boxes come nearer than `apart`. */
export function boxesAreNear(a: Box, b: Box, apart: number): boolean {
  return a.left - apart < b.right && b.left - apart < a.right && a.top - apart < b.bottom && b.top - apart < a.bottom;
}

/** Distance between two boxes, 0 where they touch or overlap. */
export function boxesBetween(a: Box, b: Box): number {
  const across = Math.max(a.left - b.right, b.left - a.right, 0);
  const down = Math.max(a.top - b.bottom, b.top - a.bottom, 0);
  return across === 0 ? down : down === 0 ? across : Math.sqrt(across * across + down * down);
}

/** Whether one box holds the other. */
export function holds(outer: Box, inner: Box): boolean {
  return outer.left <= inner.left && inner.right <= outer.right && outer.top <= inner.top && inner.bottom <= outer.bottom;
}

/** The box that a piece of a line just fills. */
export function boxOfSegment({ from, to }: Segment): Box {
  return {
    left: Math.min(from.x, to.x),
    right: Math.max(from.x, to.x),
    top: Math.min(from.y, to.y),
    bottom: Math.max(from.y, to.y),
  };
}

/** Whether a piece of a line comes into a box: one of its ends is within, or not all corners are on one side of it. */
export function crossesBox({ from, to }: Segment, { left, right, top, bottom }: Box): boolean {
  if (Math.max(from.x, to.x) < left || Math.min(from.x, to.x) > right) return false;
  if (Math.max(from.y, to.y) < top || Math.min(from.y, to.y) > bottom) return false;
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const turn = (x: number, y: number): number => Math.sign(dx * (y - from.y) - dy * (x - from.x));
  const corners = turn(left, top) + turn(right, top) + turn(left, bottom) + turn(right, bottom);
  return Math.abs(corners) < 4;
}
