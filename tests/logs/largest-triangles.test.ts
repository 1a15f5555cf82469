import { LTTB } from 'downsample';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { largestTriangles } from '../../src/logs/largest-triangles.ts';

interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * The published procedure once more, word for word and without regard to speed, as a second opinion: Steinarsson 2013, section 4.2.
 * Buckets are built as lists first; the mean of the next bucket and the area by the determinant of the three corners.
 */
function byTheBook(points: readonly Point[], count: number): readonly Point[] {
  if (points.length <= count) return points;
  const width = (points.length - 2) / (count - 2);
  const inner = Array.from({ length: count - 2 }, (_, bucket) =>
    points.slice(Math.floor(bucket * width) + 1, Math.floor((bucket + 1) * width) + 1),
  );
  const first = points[0] as Point;
  const last = points.at(-1) as Point;
  const chosen: Point[] = [first];
  inner.forEach((bucket, index) => {
    const next = inner[index + 1] ?? [last];
    const mean = {
      x: next.reduce((sum, { x }) => sum + x, 0) / next.length,
      y: next.reduce((sum, { y }) => sum + y, 0) / next.length,
    };
    const a = chosen.at(-1) as Point;
    const area = (b: Point): number => Math.abs((a.x - mean.x) * (b.y - a.y) - (a.x - b.x) * (mean.y - a.y)) / 2;
    chosen.push(bucket.reduce((best, point) => (area(point) > area(best) ? point : best)));
  });
  return [...chosen, last];
}

function kept(points: readonly Point[], count: number): readonly Point[] {
  const rows = largestTriangles(
    Float64Array.from(points, ({ x }) => x),
    Float64Array.from(points, ({ y }) => y),
    count,
  );
  return [...rows].map((row) => points[row] as Point);
}

const curve = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 50 }), fc.integer({ min: -10_000, max: 10_000 })), { minLength: 3, maxLength: 400 })
  .map((steps) => {
    let x = 0;
    return steps.map(([step, y]): Point => {
      x += step;
      return { x, y };
    });
  });

describe('points for a plot by the largest triangles', () => {
  test('are those of the published procedure, written a second time', () => {
    fc.assert(
      fc.property(curve, fc.integer({ min: 3, max: 60 }), (points, count) => {
        expect(kept(points, count)).toEqual(byTheBook(points, count));
      }),
      { seed: 20131, numRuns: 400 },
    );
  });

  // The library of npm's downsample 1.4.0 (MIT) has nothing of ours. Where two triangles of a bucket are of one size, either point
  // is right, so the ordinates are drawn from a wide range of fractions in which no two are.
  test('are those of an independent library', () => {
    const fractions = fc
      .array(fc.tuple(fc.integer({ min: 1, max: 50 }), fc.double({ min: -100, max: 100, noNaN: true })), { minLength: 3, maxLength: 400 })
      .map((steps) => {
        let x = 0;
        return steps.map(([step, y]): Point => ({ x: (x += step), y }));
      });
    fc.assert(
      fc.property(fractions, fc.integer({ min: 3, max: 60 }), (points, count) => {
        fc.pre(points.length > count);
        expect(kept(points, count)).toEqual(Array.from(LTTB([...points], count)));
      }),
      { seed: 20132, numRuns: 400 },
    );
  });

  test('a single spike in a flat line is always kept, and so are both ends', () => {
    const points = Array.from({ length: 1000 }, (_, x) => ({ x, y: x === 617 ? 9 : 1 }));
    const shown = kept(points, 12);
    expect(shown).toHaveLength(12);
    expect(shown).toContainEqual({ x: 617, y: 9 });
    expect([shown[0]?.x, shown.at(-1)?.x]).toEqual([0, 999]);
  });

  test('a hand-worked case: of four inner points in two buckets, those that stand out', () => {
    // Buckets (1, 5) (2, 1) and (3, 1) (4, 6). From (0, 0) against the mean (3.5, 3.5): areas 7 and 1.75. From (1, 5) against the end
    // (5, 0): areas 3 and 9.5, so the second.
    const points = [0, 5, 1, 1, 6, 0].map((y, x) => ({ x, y }));
    expect(kept(points, 4)).toEqual([points[0], points[1], points[4], points[5]]);
  });

  test('of no more rows than are wanted, every one is kept', () => {
    const points = [3, 1, 2].map((y, x) => ({ x, y }));
    expect(kept(points, 3)).toEqual(points);
    expect(kept(points, 100)).toEqual(points);
  });
});
