import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import type { Entry } from '../../src/entry/entry.ts';
import { STAGES } from '../../src/stages/index.ts';
import { isMissing, type Value } from '../../src/values/value.ts';
import { DIRECT_CORNERS, entryAt, MAINS_CORNERS, SPECIMENS, type Corner, type CornerRange, type Specimen } from './stage-specimens.ts';

interface Row {
  readonly name: string;
  readonly value: Value;
}

/** Stresses that could be worked out, by part and quantity. */
function rowsOf(entry: Entry): readonly Row[] {
  return derive(entry).stress.flatMap(({ references, role, quantity, stress }) =>
    isMissing(stress) ? [] : [{ name: `${role} ${references.join(',')}: ${quantity}`, value: stress }],
  );
}

function rangeOf({ corners, supply }: Specimen): CornerRange {
  return corners ?? (supply === 'AC' ? MAINS_CORNERS : DIRECT_CORNERS);
}

/** A corner, and how much harder each part of it becomes. */
function cornersOf(specimen: Specimen): readonly [fc.Arbitrary<Corner>, fc.Arbitrary<Corner>] {
  const { high, low, volts, amps } = rangeOf(specimen);
  return [
    fc.record({ high: fc.integer(high), low: fc.integer(low), volts: fc.integer(volts), amps: fc.integer(amps) }),
    fc.record({ high: upTo(high.harder), low: upTo(low.harder), volts: upTo(volts.harder), amps: upTo(amps.harder) }),
  ];
}

function upTo(max: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max });
}

/** No stress of the easier corner is above that of the harder one, but for the quantities that physics excepts. */
function expectNoFall(specimen: Specimen, easier: Corner, harder: Corner, excepted: readonly string[]): void {
  const before = rowsOf(entryAt(specimen, easier));
  const after = new Map(rowsOf(entryAt(specimen, harder)).map(({ name, value }) => [name, value]));
  expect(before.length).toBeGreaterThan(0);
  for (const { name, value } of before.filter((row) => !excepted.some((quantity) => row.name.endsWith(quantity)))) {
    expect(after.get(name)?.high ?? Number.NaN, name).toBeGreaterThanOrEqual(value.high * (1 - 1e-9));
  }
}

const named = SPECIMENS.map((specimen) => [`${specimen.kind}, ${specimen.name}`, specimen] as const);
const RUNS = { seed: 664, numRuns: 40 };

describe('what physics says of the worst corner', () => {
  it('every block with a model is here', () => {
    const withModel = STAGES.filter(({ model }) => model !== undefined).map(({ kind }) => kind);
    expect([...new Set(SPECIMENS.map(({ kind }) => kind))].sort()).toEqual([...withModel].sort());
  });

  it.each(named)('%s: its roles get a stress that could be worked out', (_, specimen) => {
    const { model } = STAGES.find(({ kind }) => kind === specimen.kind) ?? {};
    const { high, low, volts, amps } = rangeOf(specimen);
    const rows = rowsOf(entryAt(specimen, { high: high.max, low: low.min, volts: volts.max, amps: amps.max }));
    const roles = specimen.parts.map(({ role }) => role).filter((role) => model?.stresses[role] !== undefined);
    for (const role of roles) {
      expect(
        rows.some(({ name }) => name.startsWith(`${role} `)),
        role,
      ).toBe(true);
    }
  });

  it.each(named)('%s: no stress falls when the span of the supply widens or the load rises', (_, specimen) => {
    fc.assert(
      fc.property(...cornersOf(specimen), (corner, more) => {
        const { high, low, amps } = more;
        const harder = { ...corner, high: corner.high + high, low: corner.low - low, amps: corner.amps + amps };
        expectNoFall(specimen, corner, harder, specimen.mayFall?.withSupply ?? []);
      }),
      RUNS,
    );
  });

  it.each(named)('%s: no stress falls when the load rises alone', (_, specimen) => {
    fc.assert(
      fc.property(...cornersOf(specimen), (corner, { amps }) => {
        expectNoFall(specimen, corner, { ...corner, amps: corner.amps + amps }, []);
      }),
      RUNS,
    );
  });

  it.each(named)('%s: no stress falls when the highest output voltage rises at the same current', (_, specimen) => {
    fc.assert(
      fc.property(...cornersOf(specimen), (corner, { volts }) => {
        expectNoFall(specimen, corner, { ...corner, volts: corner.volts + volts }, specimen.mayFall?.withOutput ?? []);
      }),
      RUNS,
    );
  });

  it.each(named)('%s: every interval holds its nominal, of stresses, ratings, shares and operating values', (_, specimen) => {
    fc.assert(
      fc.property(cornersOf(specimen)[0], (corner) => {
        const { stress, operating } = derive(entryAt(specimen, corner));
        const all = [...stress.flatMap((row) => [row.stress, row.rating, row.ratio]), ...operating.map(({ value }) => value)];
        for (const value of all.filter((one): one is Value => !isMissing(one))) {
          expect(value.low).toBeLessThanOrEqual(value.nominal);
          expect(value.nominal).toBeLessThanOrEqual(value.high);
        }
      }),
      RUNS,
    );
  });
});
