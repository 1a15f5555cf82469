import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { entriesIn } from '../demo/entries-in.ts';
import { DESIGNS } from '../reference-designs/designs.ts';

interface Interval {
  readonly at: string;
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

/** Every value anywhere in the figures, with the path to it; the working behind each value too. */
function intervalsIn(data: unknown, at: string): readonly Interval[] {
  if (typeof data !== 'object' || data === null) return [];
  const inner = Object.entries(data).flatMap(([key, one]) => intervalsIn(one, `${at}.${key}`));
  const [low, nominal, high]: readonly unknown[] = ['low', 'nominal', 'high'].map((key): unknown => Reflect.get(data, key));
  const isValue = typeof low === 'number' && typeof nominal === 'number' && typeof high === 'number' && 'origin' in data;
  return isValue ? [{ at, low, nominal, high }, ...inner] : inner;
}

const SHEETS = [...DESIGNS, ...entriesIn(join(import.meta.dirname, '../../demo/teardowns'))];

describe('every value that follows from an entry, and every value in its working', () => {
  it.each(SHEETS.map((sheet) => [sheet.slug, sheet] as const))('%s: its interval holds its nominal', (_, { derived }) => {
    const all = intervalsIn(derived, 'derived');
    expect(all.length).toBeGreaterThan(10);
    expect(all.filter(({ low, nominal, high }) => !(low <= nominal && nominal <= high))).toEqual([]);
  });
});
