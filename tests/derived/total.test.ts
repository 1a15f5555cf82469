import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import type { Entry, Stage } from '../../src/entry/entry.ts';
import { ROLES } from '../../src/roles/index.ts';
import { STAGES } from '../../src/stages/index.ts';
import { anEntry, fact, part, portWith, stage, supply } from './an-entry.ts';

const RATINGS = [
  '82 µF 400 V',
  '2 × 470 µF 25 V polymer',
  '650 V, 140 mΩ',
  '0.33 µF X2 310 VAC',
  'T3.15 A 250 VAC',
  '1 MΩ',
  '> 35 V 100 µF',
  '0 V',
  null,
];
const TURNS = [[], [22, 4], [0, 0], [35, 4, 4], [Number.NaN, 1], [-3, 2]];
const RATIOS: readonly Stage['turnsRatio'][] = [
  null,
  { by: 'ratio', ratio: fact('5.67', 'ratio', 'n') },
  { by: 'winding voltages', primary: fact('12 V', 'voltage', 'n'), secondary: fact('2.1 V', 'voltage', 'n') },
];
const WRITTEN = { written: '', evidence: 'measured', path: ['r'] } as const;
const RESETS: readonly Stage['reset'][] = [
  null,
  { by: 'winding', turns: 22, ratio: null, ...WRITTEN },
  { by: 'winding', turns: null, ratio: [0, 0], ...WRITTEN },
  { by: 'active clamp', turns: null, ratio: null, ...WRITTEN },
  { by: 'RCD', turns: null, ratio: null, ...WRITTEN },
];
const PARAMETERS = [
  {},
  { bus: fact('392 V', 'voltage', 'b') },
  { bus: fact('3 A', 'current', 'b') },
  { output: fact('3.3-21 V', 'voltage', 'o') },
  { output: fact('0 V', 'voltage', 'o') },
];
const SUPPLIES = [null, supply('AC', '100-240 V'), supply('AC', '0 V'), supply('DC', '12-24 V', null), supply('DC', '≤ 31 V', null)];
const PORTS = [[], [portWith('C1', [5, 3], [20, 3.25])], [portWith('C1', [Number.NaN, 3])], [portWith('C1'), portWith('A1', [5, 2.4])]];

const stages = fc.array(
  fc.record({
    id: fc.constantFrom('a', 'b', 'c'),
    kind: fc.constantFrom(...STAGES.map((one) => one.kind), 'no-such-kind'),
    parameters: fc.constantFrom(...PARAMETERS),
    turns: fc.constantFrom(...TURNS),
    turnsRatio: fc.constantFrom(...RATIOS),
    reset: fc.constantFrom(...RESETS),
    feeds: fc.constantFrom<string[]>([], ['C1'], ['C1', 'A1'], ['b'], ['a'], ['no such thing']),
  }),
  { maxLength: 5 },
);

const parts = fc.array(
  fc.record({
    role: fc.constantFrom(...ROLES.map((one) => one.id), 'no-such-role'),
    stage: fc.constantFrom('a', 'b', 'c', 'elsewhere'),
    rating: fc.constantFrom(...RATINGS),
    arrangement: fc.constantFrom('single' as const, 'series' as const, 'parallel' as const, 'separate' as const),
    count: fc.constantFrom(1, 2, 0, -1, 1e9, Number.NaN),
  }),
  { maxLength: 12 },
);

function entryOf(
  drawn: [
    (typeof SUPPLIES)[number],
    (typeof PORTS)[number],
    typeof stages extends fc.Arbitrary<infer S> ? S : never,
    typeof parts extends fc.Arbitrary<infer P> ? P : never,
  ],
): Entry {
  const [input, ports, stageDraws, partDraws] = drawn;
  return anEntry(input, ports, {
    stages: stageDraws.map(({ id, kind, parameters, ...more }) => stage(id, kind, parameters, more)),
    parts: partDraws.map((one, index) =>
      part(`X${index}`, one.role, one.stage, one.rating, { arrangement: one.arrangement, count: one.count }),
    ),
  });
}

describe('deriving', () => {
  it('never throws and never yields a number that is none, whatever the entry says', () => {
    fc.assert(
      fc.property(fc.tuple(fc.constantFrom(...SUPPLIES), fc.constantFrom(...PORTS), stages, parts), (drawn) => {
        const derived = derive(entryOf(drawn));
        expect(valuesIn(derived).every((number) => Number.isFinite(number))).toBe(true);
        expect(derive(entryOf(drawn))).toEqual(derived);
      }),
      { seed: 4217, numRuns: 600 },
    );
  });
});

/** Every number that stands as low, nominal or high of a value anywhere in the figures. */
function valuesIn(data: unknown): number[] {
  if (typeof data !== 'object' || data === null) return [];
  return Object.entries(data).flatMap(([key, inner]): number[] =>
    typeof inner === 'number' && ['low', 'nominal', 'high', 'significant'].includes(key) ? [inner] : valuesIn(inner),
  );
}
