import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import type { InsulationPlace } from '../../src/entry/entry-parts.ts';
import { isMissing } from '../../src/values/value.ts';
import { anEntry, fact, stage, supply } from './an-entry.ts';

const GROUPS = ['I', 'II', 'IIIa', 'IIIb'] as const;
type Group = (typeof GROUPS)[number];
type Kind = 'basic' | 'reinforced';

interface Asked {
  readonly line: number;
  readonly working: number | null;
  readonly group: Group;
  readonly kind: Kind;
  readonly altitude: number;
}

function placeOf({ working, group, kind, altitude }: Asked): InsulationPlace {
  return {
    ...{ id: 'barrier', between: null, kind, clearance: fact('8 mm', 'length', 'c'), creepage: fact('8 mm', 'length', 'd') },
    ...{ slot: null, thickness: null, sheet: null, withstand: null, pollutionDegree: 2, method: null, alsoStated: [], note: null },
    workingVoltage: working === null ? null : fact(`${String(working)} V AC`, 'voltage', 'w'),
    materialGroup: group,
    altitude: fact(`${String(altitude)} m`, 'length', 'a'),
    path: ['insulation', 'barrier'],
  };
}

/** Clearance and creepage that are asked of the barrier, in metres. */
function distances(asked: Asked): readonly [clearance: number, creepage: number] {
  const input = supply('AC', `100-${String(asked.line)} V`);
  const [row] = derive(anEntry(input, [], { stages: [stage('main', 'flyback')], insulation: [placeOf(asked)] })).insulation;
  if (row === undefined || isMissing(row.clearance.required) || isMissing(row.creepage.required)) throw new Error('not asked');
  return [row.clearance.required.nominal, row.creepage.required.nominal];
}

const ASKED = fc.record<Asked>({
  line: fc.integer({ min: 110, max: 250 }),
  working: fc.option(fc.integer({ min: 100, max: 500 }), { nil: null }),
  group: fc.constantFrom(...GROUPS),
  kind: fc.constantFrom<Kind>('basic', 'reinforced'),
  altitude: fc.integer({ min: 0, max: 4000 }),
});

describe('distances that a whole entry asks of its barrier', () => {
  it('never shrink when line, working voltage or altitude rise, from a better material to a worse one, or from basic to reinforced', () => {
    fc.assert(
      fc.property(ASKED, fc.nat(50), fc.nat(200), fc.nat(1000), fc.nat(3), (asked, line, working, altitude, worse) => {
        const harder: readonly Asked[] = [
          { ...asked, line: asked.line + line },
          { ...asked, working: asked.working === null ? null : asked.working + working },
          { ...asked, altitude: asked.altitude + altitude },
          { ...asked, group: GROUPS[Math.min(GROUPS.length - 1, GROUPS.indexOf(asked.group) + worse)] ?? 'IIIb' },
          { ...asked, kind: 'reinforced' },
        ];
        const [clearance, creepage] = distances(asked);
        for (const one of harder) {
          const [wider, longer] = distances(one);
          expect(wider).toBeGreaterThanOrEqual(clearance);
          expect(longer).toBeGreaterThanOrEqual(creepage);
        }
      }),
      { seed: 60664, numRuns: 120 },
    );
  });

  it('creepage is never less than the clearance', () => {
    fc.assert(
      fc.property(ASKED, (asked) => {
        const [clearance, creepage] = distances(asked);
        expect(creepage).toBeGreaterThanOrEqual(clearance);
      }),
      { seed: 60664, numRuns: 120 },
    );
  });
});
