/** A point on two logarithmic axes. */
interface LogPoint {
  readonly volume: number;
  readonly watts: number;
}

/** Cells a decade, from fine to coarse. */
const CELLS = [40, 30, 20, 15, 10, 7, 5, 3, 2, 1] as const;

/** At most so many points that still cover where all are: the first of each cell of a logarithmic grid, the finest grid that is enough. */
export function thinnedPoints<Point extends LogPoint>(points: readonly Point[], most: number): readonly Point[] {
  if (points.length <= most) return points;
  let thinned: readonly Point[] = points;
  for (const cells of CELLS) {
    const firsts = new Map<string, Point>();
    for (const point of points) {
      const cell = `${String(Math.floor(Math.log10(point.volume) * cells))} ${String(Math.floor(Math.log10(point.watts) * cells))}`;
      if (!firsts.has(cell)) firsts.set(cell, point);
    }
    thinned = [...firsts.values()];
    if (thinned.length <= most) return thinned;
  }
  return thinned.slice(0, most);
}
