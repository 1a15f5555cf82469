import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { derive } from '../../src/derived/derive.ts';
import type { Derived, StressRow } from '../../src/derived/derived.ts';
import type { Entry } from '../../src/entry/entry.ts';
import { isMissing, type Known, type Value } from '../../src/values/value.ts';
import { published } from '../published/published.ts';
import { anEntry, fact, part, portWith, stage, supply } from './an-entry.ts';

function there(known: Known): Value {
  if (isMissing(known)) throw new Error(`${known.reason}; needs ${known.needs.join(', ')}`);
  return known;
}

function rowOf(entry: Entry, reference: string, quantity: string): StressRow {
  const row = derive(entry).stress.find((one) => one.references.includes(reference) && one.quantity === quantity);
  if (row === undefined) throw new Error(`no row "${quantity}" for ${reference}`);
  return row;
}

function operating({ operating: figures }: Derived, name: string): Value {
  const found = figures.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no ${name} among ${figures.map((one) => one.name).join(', ')}`);
  return there(found.value);
}

/** MAXREFDES1085 rev. 0 (2019): 17 to 60 V in, 24 V 1 A out, discontinuous, turns 1:2, diode of 0.7 V, switch 100 V, diode 200 V. */
const MINIATURE = anEntry(supply('DC', '17-60 V', null), [portWith('OUT', [24, 1])], {
  stages: [
    stage(
      'main',
      'flyback',
      { 'diode drop': fact('0.7 V', 'voltage', 'd'), Lm: fact('6.8 µH', 'inductance', 'l'), frequency: fact('125 kHz', 'frequency', 'f') },
      { turns: [1, 2], feeds: ['OUT'], mode: 'discontinuous conduction' },
    ),
  ],
  parts: [
    part('Q1', 'primary-switch', 'main', '100 V 63 A'),
    part('D1', 'rectifier-diode', 'main', '200 V 4 A'),
    part('R1', 'current-sense-resistor', 'main', '30 mΩ'),
  ],
});

describe('MAXREFDES1085, a flyback on a direct supply', () => {
  it('puts at most 90.9 V on its switch of 100 V, by the method of its own paper', () => {
    // The paper prints 90.78 V; its own formula 60 + 2.5 × 24.7 / 2 gives 90.875 V (bc).
    const { stress, methods } = rowOf(MINIATURE, 'Q1', 'off-state voltage with spike');
    expect(published(there(stress).high, '90.9 V', 'voltage').agrees).toBe(true);
    expect(methods).toContain('clamp at 2.5 times the reflected voltage (Maxim MAXREFDES1085)');
  });

  it('puts 180.0 V on its diode of 200 V with a quarter for ringing, shown and never called exceeded', () => {
    // The paper prints 180.8 V; its own formula 1.25 × (2 × 60 + 24) gives 180.0 V (bc).
    const row = rowOf(MINIATURE, 'D1', 'reverse voltage with a quarter for ringing');
    expect(published(there(row.stress).nominal, '180.0 V', 'voltage').agrees).toBe(true);
    expect(published(there(row.ratio).nominal, '0.90', 'ratio').agrees).toBe(true);
    expect(row).toMatchObject({ allowance: true, limit: null });
  });
});

describe('boost PFC and LLC at work', () => {
  // A PFC of 300 W on 85 V in critical conduction, 92 %: the peak of one phase is twice that of the two of UCC28061 (5.42 A, SLUS837), bc 10.85 A.
  const pfc = anEntry(supply('AC', '85-265 V'), [portWith('C1', [20, 15])], {
    stages: [
      stage(
        'pfc',
        'boost-pfc',
        { bus: fact('390 V', 'voltage', 'b'), efficiency: fact('92 %', 'ratio', 'e') },
        { mode: 'critical conduction' },
      ),
      stage(
        'main',
        'llc-half-bridge',
        {
          Lr: fact('75 µH', 'inductance', 'x'),
          Cr: fact('22 nF', 'capacitance', 'x'),
          Lm: fact('450 µH', 'inductance', 'x'),
          output: fact('22.4 V', 'voltage', 'o'),
        },
        { turns: [43, 5, 5], feeds: ['C1'] },
      ),
    ],
    parts: [part('L1', 'pfc-inductor', 'pfc', '240 µH 12 A')],
  });

  it('peaks at twice the crest of the line current', () => {
    expect(published(operating(derive(pfc), 'peak current of the PFC inductor').nominal, '10.85 A', 'current').agrees).toBe(true);
  });

  it('resonates at 123.9 kHz and has a gain curve through 1 at resonance, whatever the load', () => {
    const derived = derive(pfc);
    // 1 / (2π √(75 µH · 22 nF)), bc.
    expect(published(operating(derived, 'resonant frequency').nominal, '123.9 kHz', 'frequency').agrees).toBe(true);
    const [curve] = derived.gainCurves;
    for (const line of [curve?.loaded[0]?.pairs ?? [], curve?.noLoad ?? []]) {
      const above = line.find(([ratio]) => ratio >= 1);
      expect(above?.[1]).toBeGreaterThan(0.9);
      expect(above?.[1]).toBeLessThan(1.01);
    }
  });
});

describe('the highest output is not the worst corner of every part', () => {
  const stages = [
    stage('rail', 'llc-half-bridge', { output: fact('24 V', 'voltage', 'o') }, { turns: [35, 4, 4] }),
    stage('out', 'buck', { L: fact('10 µH', 'inductance', 'l'), frequency: fact('300 kHz', 'frequency', 'f') }, { feeds: ['C1'] }),
  ];
  const parts = [part('C1', 'input-capacitor', 'out', '100 µF 35 V 4 A'), part('Q1, Q2', 'buck-switch', 'out', '40 V, 5 mΩ')];
  const entry = anEntry(supply('AC', '100-240 V'), [portWith('C1', [5, 3], [12, 3], [20, 3])], { stages, parts });

  it('the input capacitor of a buck works hardest where the output is half of the input', () => {
    expect(rowOf(entry, 'C1', 'ripple current').corner).toBe('at 12 V 3 A');
  });

  it('the switches see the input whatever the output is', () => {
    expect(there(rowOf(entry, 'Q1', 'off-state voltage').stress).nominal).toBe(24);
  });
});

describe('a suppressor in a vehicle', () => {
  it('leaves the load dump unjudged and asks for its clamping voltage', () => {
    const entry = anEntry(supply('DC', '12-24 V', null), [], {
      stages: [stage('plug', 'dc-input', {})],
      parts: [part('TV1', 'transient-suppressor', 'plug', '33 V'), part('C1', 'input-capacitor', 'plug', '100 µF 50 V')],
    });
    expect(rowOf(entry, 'C1', 'voltage in a load dump')).toMatchObject({
      verdict: 'withheld',
      stress: { needs: ['clamping voltage of TV1'] },
    });
  });
});

describe('a car charger', () => {
  const parts = [part('C1', 'input-capacitor', 'plug', '100 µF 25 V')];

  it('on 12 V meets a load dump and a jump start without a word from its author, both from memory and never an error', () => {
    const entry = anEntry(supply('DC', '12 V', null), [], { stages: [stage('plug', 'dc-input', {})], parts });
    const car = { ...entry, device: { ...entry.device, kind: 'car charger' } } as const;
    expect(there(rowOf(car, 'C1', 'voltage in a load dump').stress).nominal).toBe(35);
    expect(there(rowOf(car, 'C1', 'voltage in a jump start').stress).nominal).toBe(24);
  });

  it('made for 24 V needs no jump start to meet 24 V', () => {
    const entry = anEntry(supply('DC', '12-24 V', null), [], { stages: [stage('plug', 'dc-input', {})], parts });
    const rows = derive({ ...entry, device: { ...entry.device, kind: 'car charger' } }).stress.map(({ quantity }) => quantity);
    expect(rows).toContain('voltage in a load dump');
    expect(rows).not.toContain('voltage in a jump start');
  });

  it('is what it hangs on: a converter for the desk on a direct supply meets neither', () => {
    const entry = anEntry(supply('DC', '12 V', null), [], { stages: [stage('plug', 'dc-input', {})], parts });
    expect(derive({ ...entry, device: { ...entry.device, kind: 'open frame supply' } }).stress.map(({ quantity }) => quantity)).toEqual([
      'voltage',
    ]);
  });
});

describe('the clamp capacitor of an active clamp', () => {
  const of = (more: Parameters<typeof stage>[2]): Entry =>
    anEntry(supply('AC', '100-240 V'), [portWith('C1', [20, 3.25])], {
      stages: [
        stage(
          'main',
          'active-clamp-flyback',
          { bus: fact('110-370 V', 'voltage', 'b'), efficiency: fact('92 %', 'ratio', 'e'), ...more },
          { turns: [36, 6], feeds: ['C1'] },
        ),
      ],
      parts: [part('C4', 'clamp-capacitor', 'main', '330 nF 250 V')],
    });

  it('stands the reflected output at least, and says that the swing is left out', () => {
    expect(there(rowOf(of({}), 'C4', 'voltage without its swing').stress).nominal).toBe(120);
  });

  it('stands more where leakage and frequency are known', () => {
    const known = of({ leakage: fact('2 µH', 'inductance', 'l'), frequency: fact('200 kHz', 'frequency', 'f') });
    const row = rowOf(known, 'C4', 'peak voltage');
    // 65 W / 0.92 at 110 V and 120 V reflected: 2.462 A; the clamp conducts for 47.8 % of 5 µs, half an angle of 1.472: 120 V + 6.061 V / 0.9951 (Python).
    expect(published(there(row.stress).nominal, '126.1 V', 'voltage').agrees).toBe(true);
    expect(row.corner).toBe('lowest line, at 20 V 3.25 A');
  });
});

describe('a film capacitor behind the bridge', () => {
  const of = (rating: string): Entry =>
    anEntry(supply('AC', '100-240 V'), [], {
      stages: [stage('bridge', 'rectifier')],
      parts: [part('C2', 'filter-capacitor', 'bridge', rating)],
    });

  it('stands the crest of the highest line: 264 V times the root of two', () => {
    expect(published(there(rowOf(of('0.47 µF 450 V film'), 'C2', 'voltage').stress).nominal, '373.4 V', 'voltage').agrees).toBe(true);
  });

  it('is not judged by a rating for alternating voltage, and the sheet says so', () => {
    expect(rowOf(of('0.47 µF 275 VAC film'), 'C2', 'voltage')).toMatchObject({
      verdict: 'withheld',
      rating: { reason: 'C2: voltage rating not known; 275 VAC is for alternating voltage' },
    });
  });
});

describe('gallium nitride', () => {
  it('is judged by its continuous rating, the transient one is shown', () => {
    const entry = anEntry(supply('AC', '100-240 V'), [], {
      stages: [stage('pfc', 'boost-pfc', { bus: fact('390 V', 'voltage', 'b') })],
      parts: [part('Q1', 'pfc-switch', 'pfc', '650 V (750 V transient), 150 mΩ', { technology: 'GaN' })],
    });
    const row = rowOf(entry, 'Q1', 'off-state voltage');
    expect([there(row.rating).nominal, row.transientRating && there(row.transientRating).nominal]).toEqual([650, 750]);
  });
});

describe('what physics says of every corner', () => {
  const flyback = (line: number, volts: number, amps: number): Entry =>
    anEntry(supply('AC', `100-${line} V`), [portWith('C1', [5, 3], [volts, amps])], {
      stages: [stage('main', 'flyback', { bus: fact('100-150 V', 'voltage', 'b') }, { turns: [30, 5], feeds: ['C1'] })],
      parts: [
        part('Q1', 'primary-switch', 'main', '650 V 10 A'),
        part('D1', 'rectifier-diode', 'main', '150 V 10 A'),
        part('C9', 'bulk-capacitor', 'main', '47 µF 400 V'),
      ],
    });
  const stresses = (entry: Entry): Value[] =>
    derive(entry)
      .stress.filter((row) => row.quantity !== 'supply voltage')
      .map((row) => there(row.stress));

  it('no stress falls when line, output voltage or load rises, and every interval holds its nominal', () => {
    const number = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });
    fc.assert(
      fc.property(
        number(264, 300),
        number(0, 60),
        number(9, 24),
        number(0, 8),
        number(1, 3),
        number(0, 3),
        (line, more, volts, higher, amps, heavier) => {
          const before = stresses(flyback(line, volts, amps));
          const after = stresses(flyback(line + more, volts, amps + heavier));
          expect(before.length).toBe(after.length);
          before.forEach((one, index) => {
            expect(one.low <= one.nominal && one.nominal <= one.high).toBe(true);
            expect(after[index]?.high ?? 0).toBeGreaterThanOrEqual(one.high);
          });
          const raised = rowOf(flyback(line, volts + higher, amps), 'Q1', 'off-state voltage with spike');
          expect(there(raised.stress).high).toBeGreaterThanOrEqual(
            there(rowOf(flyback(line, volts, amps), 'Q1', 'off-state voltage with spike').stress).high,
          );
        },
      ),
      { seed: 1085, numRuns: 60 },
    );
  });
});
