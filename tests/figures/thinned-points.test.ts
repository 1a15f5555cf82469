import { describe, expect, test } from 'vitest';
import { thinnedPoints } from '../../src/figures/thinned-points.ts';

const points = Array.from({ length: 900 }, (_, index) => ({ volume: 20 + (index % 30) * 12, watts: 15 + Math.floor(index / 30) * 8 }));

describe('points of a scatter that would be too many', () => {
  test('a few stay as they are', () => {
    expect(thinnedPoints(points.slice(0, 150), 150)).toEqual(points.slice(0, 150));
  });

  test('many are thinned to the limit, among them one near each end', () => {
    const thinned = thinnedPoints(points, 150);
    expect(thinned.length).toBeLessThanOrEqual(150);
    expect(thinned.length).toBeGreaterThan(60);
    expect(Math.min(...thinned.map((point) => point.watts))).toBe(15);
    expect(Math.max(...thinned.map((point) => point.watts))).toBeGreaterThan(200);
  });

  test('points at one place are one', () => {
    expect(
      thinnedPoints(
        Array.from({ length: 500 }, () => ({ volume: 100, watts: 65 })),
        150,
      ),
    ).toHaveLength(1);
  });
});
