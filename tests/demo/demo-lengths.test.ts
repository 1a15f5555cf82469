import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { PIXELS } from '../../demo-pictures/picture.ts';
import { placeParts } from '../../demo-pictures/place-parts.ts';
import { photoLengths } from '../../src/derived/photo-lengths/photo-lengths.ts';
import { isMissing } from '../../src/values/value.ts';
import { entriesIn } from './entries-in.ts';

const MARKED = entriesIn(join(import.meta.dirname, '../../demo/teardowns')).filter(({ entry }) =>
  entry.photos.some(({ distances }) => distances.length > 0),
);

describe('lengths marked in the pictures of the demo', () => {
  test('are on every mains device with a barrier', () => {
    expect(MARKED).toHaveLength(6);
  });

  test.each(MARKED)('$slug: what the drawing made lies within the interval, and reads to a tenth', ({ entry }) => {
    const drawn = placeParts(entry, false).plan.barrier?.gap ?? 0;
    const lengths = photoLengths(
      entry,
      entry.photos.map(() => PIXELS),
    );
    for (const { length } of lengths) {
      if (isMissing(length)) throw new Error(length.reason);
      expect(length.low * 1000).toBeLessThanOrEqual(drawn);
      expect(length.high * 1000).toBeGreaterThanOrEqual(drawn);
      expect(Math.abs(length.nominal * 1000 - drawn)).toBeLessThan(0.05);
    }
  });
});
