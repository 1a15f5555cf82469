/** A point in px. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A straight piece of a line. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

/** Whether two pieces share a point; touching counts. */
export function segmentsMeet(one: Segment, other: Segment): boolean {
  const a = turn(one.from, one.to, other.from);
  const b = turn(one.from, one.to, other.to);
  const c = turn(other.from, other.to, one.from);
  const d = turn(other.from, other.to, one.to);
  if (a * b < 0 && c * d < 0) return true;
  return (
    (a === 0 && within(one, other.from)) ||
    (b === 0 && within(one, other.to)) ||
    (c === 0 && within(other, one.from)) ||
    (d === 0 && within(other, one.to))
  );
}

/** Least distance of two pieces, 0 where they meet. */
export function segmentsApart(one: Segment, other: Segment): number {
  if (segmentsMeet(one, other)) return 0;
  return Math.min(pointApart(one.from, other), pointApart(one.to, other), pointApart(other.from, one), pointApart(other.to, one));
}

/** Distance of a point from the nearest point of a piece. */
export function pointApart(point: Point, { from, to }: Segment): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((point.x - from.x) * dx + (point.y - from.y) * dy) / square;
  const share = Math.min(1, Math.max(0, along));
  const [across, down] = [from.x + share * dx - point.x, from.y + share * dy - point.y];
  return Math.sqrt(across * across + down * down);
}

export function distance(a: Point, b: Point): number {
  return Math.sqrt((a.x - b.x) ** 2 + (a.y - b.y) ** 2);
}

function turn(a: Point, b: Point, c: Point): number {
  const cross = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  return Math.abs(cross) < 1e-6 ? 0 : cross;
}

function within({ from, to }: Segment, { x, y }: Point): boolean {
  return (
    x >= Math.min(from.x, to.x) - 1e-9 &&
    x <= Math.max(from.x, to.x) + 1e-9 &&
    y >= Math.min(from.y, to.y) - 1e-9 &&
    y <= Math.max(from.y, to.y) + 1e-9
  );
}
