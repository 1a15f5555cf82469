import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { powerClass } from '../../src/corpus/power-class.ts';
import { familySentence, familySupply } from '../../src/corpus/family-sentence.ts';
import { topologyFamilies } from '../../src/corpus/topology-families.ts';
import { inventedPart, inventedSheet } from './invented-sheet.ts';

describe('topology families', () => {
  it('every sheet is in exactly one, newest first in it', () => {
    const sheet = fc.record({ family: fc.constantFrom('flyback', 'boost-pfc-llc', 'buck'), day: fc.integer({ min: 1, max: 28 }) });
    fc.assert(
      fc.property(fc.array(sheet, { maxLength: 60 }), (given) => {
        const sheets = given.map(({ family, day }, index) =>
          inventedSheet({ slug: `s${String(index)}`, family, published: `2026-02-${String(day).padStart(2, '0')}` }),
        );
        const families = topologyFamilies(sheets);
        const slugs = families.flatMap((family) => family.members.map((member) => member.sheet.slug));
        expect([...slugs].sort()).toEqual(sheets.map((one) => one.slug).sort());
        expect(new Set(families.map((family) => family.id)).size).toBe(families.length);
        for (const family of families) {
          const dates = family.members.map((member) => member.sheet.published);
          expect(dates).toEqual([...dates].sort().reverse());
          for (const member of family.members) expect(member.sheet.family).toBe(family.id);
        }
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('one member is no spread; two have a median', () => {
    const one = inventedSheet({ slug: 'a', densityWPerCm3: 0.6 });
    expect(topologyFamilies([one])[0]?.densityWPerCm3).toBeNull();
    expect(topologyFamilies([one, inventedSheet({ slug: 'b', densityWPerCm3: 0.8 })])[0]?.densityWPerCm3).toMatchObject({
      low: 0.6,
      high: 0.8,
      count: 2,
    });
  });

  it('the controllers of the converters tell platforms apart; the protocol controller is left out', () => {
    const [family] = topologyFamilies([
      inventedSheet({
        slug: 'a',
        parts: [
          inventedPart({ number: 'PF62' }),
          inventedPart({ number: 'LX21' }),
          inventedPart({ number: 'PX88', role: 'protocol-controller' }),
        ],
      }),
    ]);
    expect(family?.members[0]?.controllers).toEqual(['PF62', 'LX21']);
  });

  it('82 µF at 100 W is 0.82 µF for each watt; without a rating there is no such figure', () => {
    const sheets = [
      inventedSheet({ slug: 'a', published: '2026-02-02', ratedWatts: 100, bulkMicrofarads: 82 }),
      inventedSheet({ slug: 'b', published: '2026-02-01', ratedWatts: null, bulkMicrofarads: 82 }),
    ];
    expect(topologyFamilies(sheets)[0]?.members.map((member) => member.bulkMicrofaradsPerWatt)).toEqual([0.82, null]);
  });

  it('is named after the blocks that make it, not after those that every adapter has', () => {
    const chains = [
      [
        'boost-pfc-llc-half-bridge',
        ['input-filter', 'rectifier', 'boost-pfc', 'llc-half-bridge', 'secondary-rectifier', 'buck'],
        'Boost PFC, LLC half bridge',
      ],
      ['active-clamp-flyback', ['rectifier', 'bulk-capacitor', 'active-clamp-flyback'], 'Active-clamp flyback'],
      ['battery-pack-buck-boost', ['battery-pack', 'buck-boost', 'port-control'], 'Battery pack, buck-boost'],
      ['topology-not-described', [], 'Topology not described'],
    ] as const;
    for (const [family, glyphs, name] of chains)
      expect(topologyFamilies([inventedSheet({ slug: 'a', family, glyphs })])[0]?.name).toBe(name);
  });

  it('says in one sentence a block what its makers chose', () => {
    const [family] = topologyFamilies([inventedSheet({ slug: 'a' })]);
    const block = family?.chain.find(({ kind }) => kind === 'active-clamp-flyback');
    expect(block?.meaning).toContain(family === undefined ? '?' : familySentence(family));
    expect(family === undefined ? null : familySupply(family)).toBe('mains');
  });

  it('the chain is that of the member that names most blocks, each block once', () => {
    const [family] = topologyFamilies([
      inventedSheet({ slug: 'a', glyphs: ['rectifier', 'active-clamp-flyback'] }),
      inventedSheet({ slug: 'b', glyphs: ['input-filter', 'rectifier', 'active-clamp-flyback', 'buck', 'buck'] }),
    ]);
    expect(family?.chain.map((block) => block.kind)).toEqual(['input-filter', 'rectifier', 'active-clamp-flyback', 'buck']);
    expect(family?.chain.map((block) => block.sheets)).toEqual([1, 2, 2, 1]);
  });
});

it.each([
  [20, 'to 30 W'],
  [30, 'to 30 W'],
  [30.5, 'over 30 to 65 W'],
  [100, 'over 65 to 100 W'],
  [500, 'over 240 W'],
])('%d W is in the class %s', (watts, name) => {
  expect(powerClass(watts)).toBe(name);
});
