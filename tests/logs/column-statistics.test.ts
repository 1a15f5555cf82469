import fc from 'fast-check';
import * as reference from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { columnStatistics } from '../../src/logs/column-statistics.ts';

/** Sums in another order differ in the last of sixteen digits for each row; a thousand rows are far below this fraction. */
const BINARY_ROOM = 1e-11;

function isNear(one: number, other: number, size = Math.max(Math.abs(one), Math.abs(other))): boolean {
  return Math.abs(one - other) <= BINARY_ROOM * size;
}

const readings = fc.array(
  fc.integer({ min: -5_000_000, max: 5_000_000 }).map((whole) => whole / 1e4),
  { minLength: 2, maxLength: 300 },
);

describe('statistics of a column agree with simple-statistics', () => {
  test('lowest, highest and standard deviation, of any readings', () => {
    fc.assert(
      fc.property(readings, (values) => {
        const time = Float64Array.from(values, (_, row) => row);
        const found = columnStatistics(time, Float64Array.from(values));
        expect(found?.lowest).toBe(reference.min(values));
        expect(found?.highest).toBe(reference.max(values));
        expect(values[found?.lowestRow ?? -1]).toBe(found?.lowest);
        expect(values[found?.highestRow ?? -1]).toBe(found?.highest);
        const size = Math.max(...values.map(Math.abs), 1);
        expect(isNear(found?.deviation ?? NaN, reference.sampleStandardDeviation(values), size)).toBe(true);
      }),
      { seed: 77, numRuns: 300 },
    );
  });

  test('the mean over time of evenly spaced rows is the mean of the middles between neighbours', () => {
    fc.assert(
      fc.property(readings, (values) => {
        const time = Float64Array.from(values, (_, row) => row * 0.25);
        const middles = values.slice(1).map((value, index) => (value + (values[index] ?? 0)) / 2);
        const size = Math.max(...values.map(Math.abs), 1);
        expect(isNear(columnStatistics(time, Float64Array.from(values))?.mean ?? NaN, reference.mean(middles), size)).toBe(true);
      }),
      { seed: 78, numRuns: 300 },
    );
  });

  test('a large mean beside a small spread costs no digits', () => {
    const values = [1e9 + 4, 1e9 + 7, 1e9 + 13, 1e9 + 16];
    expect(reference.sampleStandardDeviation(values)).toBe(Math.sqrt(30));
    expect(columnStatistics(Float64Array.of(0, 1, 2, 3), Float64Array.from(values))?.deviation).toBe(Math.sqrt(30));
  });
});

describe('sums over time', () => {
  test('20 V and 2 A for an hour are 40 Wh, however the rows stand', () => {
    const time = Float64Array.of(0, 1, 5, 600, 3599, 3600);
    expect(columnStatistics(time, new Float64Array(6).fill(40))?.integral).toBe(40 * 3600);
  });

  test('a straight fall from 10 A to 0 A in a minute is 300 C', () => {
    expect(columnStatistics(Float64Array.of(0, 15, 60), Float64Array.of(10, 7.5, 0))?.integral).toBe(300);
  });

  test('rows that stand closer together do not weigh more: a mean over time is not a mean over rows', () => {
    const found = columnStatistics(Float64Array.of(0, 1, 2, 3, 100), Float64Array.of(10, 10, 10, 0, 0));
    expect(found?.mean).toBe(25 / 100);
  });

  test('blank cells are left out, and a column of nothing has no statistics', () => {
    expect(columnStatistics(Float64Array.of(0, 1, 2), Float64Array.of(4, NaN, 6))).toMatchObject({ rows: 2, integral: 10, mean: 5 });
    expect(columnStatistics(Float64Array.of(0, 1), Float64Array.of(NaN, NaN))).toBeNull();
  });
});
