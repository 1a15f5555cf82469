import { quantile } from 'simple-statistics';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { familiesByPower } from '../../../src/corpus/family/families-by-power.ts';
import { familyFigures } from '../../../src/corpus/family/family-figures.ts';
import { familySignature } from '../../../src/corpus/family/family-signature.ts';
import { familyStress } from '../../../src/corpus/family/family-stress.ts';
import { outliersOf } from '../../../src/corpus/family/outliers.ts';
import type { CorpusSheet } from '../../../src/corpus/corpus-sheet.ts';
import { medianOf } from '../../../src/corpus/spread.ts';
import { topologyFamilies, type TopologyFamily } from '../../../src/corpus/topology-families.ts';
import { inventedPart, inventedSheet, inventedTraits } from '../invented-sheet.ts';

function onlyFamily(sheets: readonly CorpusSheet[]): TopologyFamily {
  const [family] = topologyFamilies(sheets);
  if (family === undefined) throw new Error('no family');
  return family;
}

describe('the figures of a family', () => {
  test('a bare board has no part in the density of the cases', () => {
    const family = onlyFamily([
      inventedSheet({ slug: 'a', densityWPerCm3: 0.6 }),
      inventedSheet({ slug: 'b', densityWPerCm3: 0.8 }),
      inventedSheet({ slug: 'c', densityWPerCm3: 3, traits: inventedTraits({ basis: 'board' }) }),
    ]);
    const density = familyFigures(family).find(({ unit }) => unit === 'W/cm³');
    expect(density?.spread).toEqual({ count: 2, low: 0.6, median: 0.7, high: 0.8 });
  });

  test('efficiencies are those of the line that most sheets were measured at', () => {
    const at = (slug: string, line: string, ratio: number) =>
      inventedSheet({
        slug,
        traits: inventedTraits({ efficiency: { ratio, statistic: 'average', line, place: 'connector', lacking: [] } }),
      });
    const family = onlyFamily([at('a', '230 V', 0.9), at('b', '230 V', 0.92), at('c', '115 V', 0.7)]);
    const efficiency = familyFigures(family).find(({ unit }) => unit === '%');
    expect([efficiency?.name, efficiency?.spread.count, efficiency?.spread.median.toFixed(1)]).toEqual([
      'Efficiency, mean, 230 V',
      2,
      '91.0',
    ]);
  });

  test('outliers are beyond the fences: 1.5 interquartile ranges outside the quartiles', () => {
    // Quartiles of 1 to 9 are 3 and 7, so the fences stand at −3 and 13; with 20 in place of 9 the upper one is still 13.
    const rows = [1, 2, 3, 4, 5, 6, 7, 8, 20].map((figure) => ({ figure }));
    expect(outliersOf(rows)).toEqual([{ figure: 20, side: 'high' }]);
    expect(outliersOf(rows.map(({ figure }) => ({ figure: Math.min(figure, 13) })))).toEqual([]);
    expect(outliersOf([{ figure: 1 }, { figure: 1 }, { figure: 90 }])).toEqual([]);
  });

  test('the median is that of a statistics library', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 1, maxLength: 30 }), (numbers) => {
        const sorted = [...numbers].sort((one, other) => one - other);
        expect(medianOf(sorted)).toBe(quantile(sorted, 0.5));
      }),
      { seed: 20260314, numRuns: 200 },
    );
  });
});

describe('how the members of a family vary', () => {
  test('ways to the ports, rectifiers and controllers are counted by sheets', () => {
    const buck = inventedTraits({ fanOut: ['buck: USB-C', 'buck: USB-C', 'buck: USB-A'], rectification: 'synchronous' });
    const parts = [inventedPart({ number: 'VLR-1' })];
    const family = onlyFamily([
      inventedSheet({ slug: 'a', traits: buck, parts }),
      inventedSheet({ slug: 'b', traits: buck, parts }),
      inventedSheet({ slug: 'c', traits: inventedTraits({ rectification: 'diode' }), parts: [inventedPart({ number: 'VLR-2' })] }),
    ]);
    expect(familySignature(family)).toEqual({
      isolated: true,
      rectification: [
        { words: 'synchronous rectifiers', sheets: 2 },
        { words: 'diodes', sheets: 1 },
      ],
      fanOut: [{ words: '2 × buck: USB-C, buck: USB-A', sheets: 2 }],
      controllers: [{ words: 'VLR-1', sheets: 2 }],
    });
  });

  test('the stress strip has one mark a sheet, its worst, and leaves out withheld ones', () => {
    const stress = (ratio: number | null, verdict: 'within' | 'over' | 'withheld') => [
      { role: 'bulk-capacitor', quantity: 'voltage', ratio, limit: 0.9, verdict },
    ];
    const sheets = [stress(0.87, 'within'), stress(0.94, 'over'), stress(null, 'withheld')].map((rows, index) =>
      inventedSheet({ slug: `s${String(index)}`, traits: inventedTraits({ stress: rows }) }),
    );
    const [row, ...others] = familyStress(sheets);
    expect(others).toEqual([]);
    expect(row).toMatchObject({ name: 'bulk capacitor, voltage', limit: 0.9, worst: 0.94, isOver: true });
    expect([row?.marks.length, row?.median.toFixed(3)]).toEqual([2, '0.905']);
  });
});

test('each power class names the families that serve it, most sheets first', () => {
  const families = topologyFamilies([
    inventedSheet({ slug: 'a', family: 'flyback', glyphs: ['flyback'], ratedWatts: 20 }),
    inventedSheet({ slug: 'b', family: 'llc-half-bridge', glyphs: ['llc-half-bridge'], ratedWatts: 100 }),
    inventedSheet({ slug: 'c', family: 'flyback', glyphs: ['flyback'], ratedWatts: 90 }),
    inventedSheet({ slug: 'd', family: 'llc-half-bridge', glyphs: ['llc-half-bridge'], ratedWatts: 90 }),
  ]);
  expect(
    familiesByPower(families).map(({ name, families: found }) => [
      name,
      found.map(({ family, sheets }) => `${family.id} ${String(sheets)}`),
    ]),
  ).toEqual([
    ['to 30 W', ['flyback 1']],
    ['over 65 to 100 W', ['llc-half-bridge 2', 'flyback 1']],
  ]);
});
