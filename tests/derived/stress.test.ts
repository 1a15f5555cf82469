import { describe, expect, it } from 'vitest';
import type { StressRow } from '../../src/derived/derived.ts';
import { derive } from '../../src/derived/derive.ts';
import { verdictOf } from '../../src/derived/stress/judge.ts';
import type { Entry, Part } from '../../src/entry/entry.ts';
import { isMissing } from '../../src/values/value.ts';
import { published } from '../published/published.ts';
import { measuredValue } from '../values/a-quantity.ts';
import { anEntry, fact, part, portWith, stage, supply } from './an-entry.ts';

const MAINS = supply('AC', '100-240 V');
const BUS = { bus: fact('392 V', 'voltage', 'stages.pfc.bus') };

function rowOf(entry: Entry, reference: string, quantity?: string): StressRow {
  const row = derive(entry).stress.find(
    (one) => one.references.includes(reference) && (quantity === undefined || one.quantity === quantity),
  );
  if (row === undefined) throw new Error(`no stress row for ${reference}`);
  return row;
}

function only(one: Part, more: Partial<Entry> = {}): StressRow {
  return rowOf(anEntry(MAINS, [portWith('C1', [20, 5])], { parts: [one], ...more }), one.references[0] ?? '');
}

function percent(row: StressRow): string {
  return isMissing(row.ratio) ? row.ratio.reason : (100 * row.ratio.nominal).toFixed(1);
}

describe('bulk capacitor on 100–240 V without PFC', () => {
  // The crest of 264 V is 373.4 V: 93.3, 88.9 and 83.0 % of 400, 420 and 450 V, worked with Python.
  it.each([
    ['350 V', '106.7', 'over'],
    ['400 V', '93.3', 'over'],
    ['420 V', '88.9', 'within'],
    ['450 V', '83.0', 'within'],
  ])('%s is used to %s %%, %s 0.90', (volts, used, verdict) => {
    const row = only(part('C1', 'bulk-capacitor', 'bulk', `82 µF ${volts}`));
    expect([percent(row), row.verdict, row.limit]).toEqual([used, verdict, 0.9]);
  });

  it('in series is withheld: how the two share is not known', () => {
    expect(only(part('C1, C2', 'bulk-capacitor', 'bulk', '82 µF 200 V', { arrangement: 'series' }))).toMatchObject({ verdict: 'withheld' });
  });
});

describe('parts before the bulk', () => {
  it('an X2 capacitor is judged by rms, a part without class by the crest', () => {
    const classed = only(part('CX1', 'x-capacitor', 'input', '0.1 µF 250 V~ X2'));
    expect([percent(classed), classed.verdict, classed.quantity]).toEqual(['105.6', 'within', 'supply voltage']);
    const plain = only(part('CX1', 'x-capacitor', 'input', '0.1 µF 250 V'));
    expect([percent(plain), plain.verdict, plain.quantity]).toEqual(['149.3', 'over', 'peak supply voltage']);
  });

  it('a varistor counts only with a rating for alternating voltage', () => {
    expect(only(part('RV1', 'varistor', 'input', '300 VAC'))).toMatchObject({ verdict: 'within' });
    expect(only(part('RV1', 'varistor', 'input', '250 VAC'))).toMatchObject({ verdict: 'over' });
    expect(only(part('RV1', 'varistor', 'input', '470 V'))).toMatchObject({ verdict: 'withheld' });
  });

  it('a bridge blocks the crest', () => {
    const row = only(part('BD1', 'bridge-rectifier', 'bridge', '600 V 4 A'));
    expect([percent(row), row.verdict]).toEqual(['62.2', 'within']);
  });

  it('a fuse is judged by voltage and by current', () => {
    const entry = anEntry(supply('AC', '90-264 V'), [portWith('C1', [20, 3.25])], {
      parts: [part('F1', 'input-fuse', 'input', '2 A 250 VAC')],
    });
    expect(rowOf(entry, 'F1', 'supply voltage')).toMatchObject({ verdict: 'within' });
    const current = rowOf(entry, 'F1', 'input current');
    // 65 W at 90 V, 85 to 95 % and a power factor of 0.5 to 0.7: 1.09 to 1.70 A against 1.5 A.
    expect(current).toMatchObject({ limit: 0.75, verdict: 'straddles' });
    expect(isMissing(current.stress) || published(current.stress.high, '1.70 A', 'current').agrees).toBe(true);
  });
});

describe('fuse of a direct supply', () => {
  it('gets no room above its voltage, and no current behind a battery', () => {
    const parts = [part('F1', 'input-fuse', 'input', '10 A 24 V')];
    const car = anEntry(supply('DC', '12-24 V', null), [portWith('C1', [20, 3])], { parts });
    expect(rowOf(car, 'F1', 'supply voltage')).toMatchObject({ limit: 1, verdict: 'within' });
    const bank = { ...car, stages: [stage('pack', 'battery-pack')] };
    expect(rowOf(bank, 'F1', 'input current')).toMatchObject({ verdict: 'withheld' });
  });
});

describe('boost PFC and LLC half bridge', () => {
  const stages = [
    stage('pfc', 'boost-pfc', BUS),
    stage('main', 'llc-half-bridge', { output: fact('22.5 V', 'voltage', 'o') }, { turns: [35, 4, 4] }),
    stage('out C1', 'buck'),
  ];

  it('put the bus on switch, diode, bulk capacitor and both half-bridge switches', () => {
    for (const [reference, role, at] of [
      ['Q1', 'pfc-switch', 'pfc'],
      ['D1', 'pfc-diode', 'pfc'],
      ['Q2', 'primary-switch', 'main'],
    ] as const) {
      const row = only(part(reference, role, at, '650 V'), { stages });
      expect([percent(row), row.verdict]).toEqual(['60.3', 'within']);
    }
  });

  it('put twice the output on each rectifier of a centre tap', () => {
    const row = only(part('Q5', 'synchronous-rectifier', 'main', '60 V, 3.1 mΩ'), { stages });
    expect(!isMissing(row.stress) && published(row.stress.nominal, '45.1 V', 'voltage').agrees).toBe(true);
    expect(row.verdict).toBe('within');
  });

  it('withhold the rectifier where the winding is not known', () => {
    const unknown = stages.map((one) => ({ ...one, turns: [] }));
    expect(only(part('Q5', 'synchronous-rectifier', 'main', '60 V'), { stages: unknown })).toMatchObject({
      verdict: 'withheld',
      stress: { needs: ['turns of main'] },
    });
  });

  it('put the output of the stage on its capacitors, never the ports behind a converter', () => {
    expect(percent(only(part('C21', 'output-capacitor', 'main', '470 µF 25 V polymer'), { stages }))).toBe('90.0');
    const unknown = stages.map((one) => ({ ...one, parameters: {} }));
    expect(only(part('C21', 'output-capacitor', 'main', '470 µF 25 V polymer'), { stages: unknown })).toMatchObject({
      verdict: 'withheld',
      stress: { needs: ['output of main'] },
    });
  });
});

describe('flyback family', () => {
  const main = stage('main', 'active-clamp-flyback', {}, { turns: [22, 4, 5, 13], feeds: ['C1'] });
  const ports = [portWith('C1', [5, 3], [20, 3.25])];
  const parts = [
    part('C1a', 'bulk-capacitor', 'bulk', '82 µF 400 V'),
    part('QL', 'primary-switch', 'main', '650 V'),
    part('Q_SR1', 'synchronous-rectifier', 'main', '150 V'),
    part('C2, C3', 'output-capacitor', 'main', '270 µF 25 V polymer'),
  ];
  const entry = anEntry(supply('AC', '85-265 V'), ports, { parts, stages: [main] });

  // Numbers of TIDA-01622 (TIDUDW2, table 1, schematic turns 22:4), worked with Python from what it prints.
  it.each([
    ['QL', '484.8 V', '74.6', 'within'],
    ['Q_SR1', '88.1 V', '58.8', 'within'],
    ['C2', '20.0 V', '80.0', 'within'],
  ])('%s sees %s, %s %%', (reference, volts, used, verdict) => {
    const row = rowOf(entry, reference);
    expect(!isMissing(row.stress) && published(row.stress.nominal, volts, 'voltage').agrees).toBe(true);
    expect([percent(row), row.verdict]).toEqual([used, verdict]);
  });

  it('ranges over the published methods where neither clamp nor spike is known', () => {
    const given = stage('main', 'flyback', { reflected: fact('85 V', 'voltage', 'stages.main.reflected') });
    const row = rowOf({ ...entry, stages: [given] }, 'QL');
    if (isMissing(row.stress)) throw new Error(row.stress.reason);
    // On the design of AN-4137 (375 V, 85 V): half of the reflected voltage on top (SLVAFK6) 502 V, 2.5 times it (MAXREFDES1085) 587 V.
    const unrounded = { fraction: 0.0005, reason: 'the note rounds the crest of 265 V, 374.8 V, to 375 V' };
    expect([
      published(row.stress.low, '502 V', 'voltage', unrounded).agrees,
      published(row.stress.high, '587 V', 'voltage', unrounded).agrees,
    ]).toEqual([true, true]);
    expect(row.methods).toHaveLength(3);
    expect(row.quantity).toBe('off-state voltage with spike');
  });

  it('adds a spike that somebody saw, and stops at a clamp that is known', () => {
    const reflected = fact('85 V', 'voltage', 'r');
    const spiked = stage('main', 'flyback', { reflected, spike: fact('87 V', 'voltage', 's') });
    const clamped = stage('main', 'flyback', { reflected, clamp: fact('172 V', 'voltage', 'c') });
    // AN-4137, appendix step 11: 375 V + 172 V = 547 V; its 265 V crest is 374.8 V before rounding.
    for (const one of [spiked, clamped]) {
      const row = rowOf({ ...entry, stages: [one] }, 'QL');
      expect(!isMissing(row.stress) && published(row.stress.nominal, '547 V', 'voltage').agrees).toBe(true);
    }
    expect(rowOf({ ...entry, stages: [spiked] }, 'QL').quantity).toBe('off-state voltage with spike');
    expect(rowOf(entry, 'QL').quantity).toBe('off-state voltage without spike');
  });

  it('withholds the switch and says what is missing', () => {
    const row = rowOf({ ...entry, stages: [{ ...main, turns: [] }] }, 'QL');
    expect(row).toMatchObject({ verdict: 'withheld', stress: { needs: ['turns of main'] } });
  });

  it('withholds a verdict where the rating is not marked', () => {
    const bare = anEntry(MAINS, ports, { parts: [part('QL', 'primary-switch', 'main', null)], stages: [main] });
    expect(rowOf(bare, 'QL')).toMatchObject({ verdict: 'withheld', rating: { needs: ['voltage rating of QL'] } });
  });

  it('leaves out parts that are not fitted', () => {
    const empty = anEntry(MAINS, ports, {
      parts: [part('QL', 'primary-switch', 'main', '650 V', { fitting: 'not fitted' })],
      stages: [main],
    });
    expect(derive(empty).stress).toEqual([]);
  });
});

describe('policy', () => {
  it('is the one that the author chose', () => {
    const row = only(part('Q1', 'pfc-switch', 'pfc', '500 V'), { stages: [stage('pfc', 'boost-pfc', BUS)], derating: 'mil-dtl-917' });
    expect(row).toMatchObject({ limit: 0.7, policy: 'mil-dtl-917', verdict: 'over' });
  });

  it('holds ceramic capacitors to 60 % of their rating, polymer ones to 80 %', () => {
    const stages = [stage('main', 'flyback', {}, { feeds: ['C1'] })];
    expect(only(part('C5', 'output-capacitor', 'main', '33 µF 25 V X5R'), { stages })).toMatchObject({ limit: 0.6, verdict: 'over' });
    expect(only(part('C5', 'output-capacitor', 'main', '270 µF 25 V polymer'), { stages })).toMatchObject({
      limit: 0.8,
      verdict: 'within',
    });
  });
});

describe('a verdict', () => {
  it('is within at the limit, straddles it, is over above it, and is withheld without a ratio', () => {
    expect(verdictOf(measuredValue('ratio', 0.7, 0.75, 0.8), 0.8)).toBe('within');
    expect(verdictOf(measuredValue('ratio', 0.7, 0.79, 0.81), 0.8)).toBe('straddles');
    expect(verdictOf(measuredValue('ratio', 0.81, 0.85, 0.9), 0.8)).toBe('over');
    expect(verdictOf(measuredValue('ratio', 0.9, 0.95, 0.99), null)).toBe('within');
    expect(verdictOf({ missing: true, reason: 'x', needs: [] }, 0.8)).toBe('withheld');
  });
});
