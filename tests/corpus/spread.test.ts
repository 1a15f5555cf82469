import { median } from 'simple-statistics';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { spreadOf } from '../../src/corpus/spread.ts';

it('one sheet is no spread, and sheets without the figure do not count', () => {
  expect(spreadOf([])).toBeNull();
  expect(spreadOf([0.7, null, null])).toBeNull();
  expect(spreadOf([0.7, null, 0.5])).toEqual({ count: 2, low: 0.5, median: 0.6, high: 0.7 });
});

it('the median is that of a statistics library', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 2400 }), { minLength: 2, maxLength: 60 }), (watts) => {
      expect(spreadOf(watts)).toEqual({ count: watts.length, low: Math.min(...watts), median: median(watts), high: Math.max(...watts) });
    }),
    { seed: 11, numRuns: 300 },
  );
});
