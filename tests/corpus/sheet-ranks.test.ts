import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sheetRanks } from '../../src/corpus/sheet-ranks.ts';
import { inventedSheet, inventedTraits } from './invented-sheet.ts';

const densityOf = (sheets: Parameters<typeof sheetRanks>[0], slug: string): string | null => {
  const rank = sheetRanks(sheets)
    .get(slug)
    ?.find(({ measure }) => measure === 'density');
  return rank === undefined ? null : `${String(rank.place)} of ${String(rank.of)}, ${rank.among}`;
};

describe('a device is ranked among comparable ones', () => {
  const board = inventedTraits({ basis: 'board' });
  const sheets = [
    inventedSheet({ slug: 'a', ratedWatts: 100, densityWPerCm3: 0.7 }),
    inventedSheet({ slug: 'b', ratedWatts: 100, densityWPerCm3: 0.9 }),
    inventedSheet({ slug: 'c', ratedWatts: 90, densityWPerCm3: 0.9 }),
    inventedSheet({ slug: 'bare', ratedWatts: 100, densityWPerCm3: 2.1, traits: board }),
    inventedSheet({ slug: 'small', ratedWatts: 30, densityWPerCm3: 1.4 }),
    inventedSheet({ slug: 'unknown', ratedWatts: null, densityWPerCm3: null }),
  ];

  test('the densest case of its power class is first, equal ones share the place, and the next place is left out', () => {
    expect(densityOf(sheets, 'b')).toBe('1 of 3, cased, over 65 to 100 W');
    expect(densityOf(sheets, 'c')).toBe('1 of 3, cased, over 65 to 100 W');
    expect(densityOf(sheets, 'a')).toBe('3 of 3, cased, over 65 to 100 W');
  });

  test('a bare board is not set against cases, nor a small charger against large ones', () => {
    expect(densityOf(sheets, 'bare')).toBeNull();
    expect(densityOf(sheets, 'small')).toBeNull();
    expect(densityOf(sheets, 'unknown')).toBeNull();
  });

  test('a mean efficiency is not set against a point, nor 115 V against 230 V', () => {
    const at = (slug: string, statistic: 'average' | 'point', line: string) =>
      inventedSheet({
        slug,
        traits: inventedTraits({ efficiency: { ratio: 0.93, statistic, line, place: 'connector', lacking: [] } }),
      });
    const ranks = sheetRanks([
      at('a', 'average', '230 V'),
      at('b', 'point', '230 V'),
      at('c', 'average', '115 V'),
      at('d', 'average', '230 V'),
    ]);
    const efficiencyOf = (slug: string) => ranks.get(slug)?.filter(({ measure }) => measure === 'efficiency') ?? [];
    expect(['a', 'b', 'c', 'd'].map((slug) => efficiencyOf(slug).map(({ of }) => of))).toEqual([[2], [], [], [2]]);
  });

  test('an efficiency at the end of a cable is not set against one at the connector, and one without its conditions against none', () => {
    const at = (slug: string, place: string | null, lacking: readonly string[] = []) =>
      inventedSheet({
        slug,
        traits: inventedTraits({ efficiency: { ratio: 0.93, statistic: 'average', line: '230 V', place, lacking } }),
      });
    const ranks = sheetRanks([
      at('a', 'connector'),
      at('b', 'cable end'),
      at('c', 'connector'),
      at('d', null, ['place of measurement']),
      at('e', null, ['place of measurement']),
    ]);
    const among = (slug: string) => ranks.get(slug)?.find(({ measure }) => measure === 'efficiency')?.among ?? null;
    expect(among('a')).toMatch(/^mean at 230 V, at the connector, /);
    expect(among('c')).toBe(among('a'));
    expect([among('b'), among('d'), among('e')]).toEqual([null, null, null]);
  });
});

test('every place is one more than the number of denser sheets', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 2, maxLength: 40 }), (densities) => {
      const sheets = densities.map((density, index) => inventedSheet({ slug: `s${String(index)}`, densityWPerCm3: density / 10 }));
      const ranks = sheetRanks(sheets);
      for (const [index, density] of densities.entries()) {
        const rank = ranks.get(`s${String(index)}`)?.find(({ measure }) => measure === 'density');
        expect(rank?.place).toBe(1 + densities.filter((other) => other > density).length);
      }
    }),
    { seed: 20260314, numRuns: 100 },
  );
});
