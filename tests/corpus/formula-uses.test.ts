import { describe, expect, it } from 'vitest';
import { formulaUses } from '../../src/corpus/formula-uses.ts';
import type { Derived, StressRow } from '../../src/derived/derived.ts';
import { missing } from '../../src/values/missing.ts';
import type { Value } from '../../src/values/value.ts';

const READ = { evidence: 'measured', written: '389 V', at: 'stages.pfc.bus' } as const;

function volts(nominal: number, origin: Value['origin'] = READ): Value<'voltage'> {
  return { dimension: 'voltage', low: nominal * 0.98, nominal, high: nominal * 1.02, significant: 3, origin };
}

function ratio(nominal: number, stress: Value): Value<'ratio'> {
  return {
    dimension: 'ratio',
    low: nominal,
    nominal,
    high: nominal,
    significant: 2,
    origin: { evidence: 'computed', formula: 'voltage-stress-ratio', inputs: { stress } },
  };
}

function row(reference: string, stress: Value<'voltage'>, ofRating: Value<'ratio'>): StressRow {
  return {
    references: [reference],
    role: 'primary-switch',
    stage: 'main',
    quantity: 'voltage',
    stress,
    rating: volts(650),
    ratio: ofRating,
    limit: 0.8,
    policy: 'invented',
    verdict: 'within',
  };
}

const peak = volts(373, { evidence: 'computed', formula: 'mains-peak', inputs: { rms: volts(264) } });
const figures = {
  named: { 'mains peak': peak, energy: missing('no bulk capacitor', ['bulk capacitor']) },
  stress: [row('Q1', peak, ratio(0.57, peak)), row('Q2', peak, ratio(0.61, peak))],
};
const absent = missing('not looked at', []);
const derived: Derived = {
  ratedPower: absent,
  size: { volume: absent, density: absent, specificPower: absent, basis: 'cased' },
  input: { highLine: absent, peak, lowLine: absent, inputCurrent: absent },
  bulk: { references: [], capacitance: absent, voltage: absent, energy: absent, bleed: absent, timeToSafe: absent },
  shares: null,
  path: null,
  insulation: [],
  derating: { id: 'consumer-practice', title: 'Consumer practice', meaning: '', isOwn: false },
  operating: [],
  windings: [],
  gainCurves: [],
  logs: [],
  efficiency: { runs: [], noLoad: [], judgements: [], outOfScope: null },
  losses: null,
  stageVerdicts: [],
  mains: null,
  sustained: [],
  bank: null,
  heat: { loss: absent, at: null, surface: absent, flux: absent, temperature: absent, spots: [], contacts: [], lives: [] },
  topology: '',
  family: '',
  revision: 'A',
  ...figures,
};

describe('the formulas behind one sheet', () => {
  it('one row a formula, named by the figure, with the count of other values', () => {
    expect(formulaUses(derived).map(({ formula, label, others }) => [formula, label, others])).toEqual([
      ['mains-peak', 'mains peak', 0],
      ['voltage-stress-ratio', 'Q1 voltage, of its rating', 1],
    ]);
  });

  it('keeps the interval and leaves the trace behind', () => {
    expect(formulaUses(derived)[0]?.value).toEqual({
      dimension: 'voltage',
      low: 373 * 0.98,
      nominal: 373,
      high: 373 * 1.02,
      significant: 3,
    });
  });

  it('a value that only served another one says for which', () => {
    expect(formulaUses({ ...derived, named: {} }).map(({ formula, label }) => [formula, label])).toEqual([
      ['voltage-stress-ratio', 'Q1 voltage, of its rating'],
      ['mains-peak', 'for Q1 voltage, of its rating'],
    ]);
  });

  it('read and missing values use no formula', () => {
    expect(formulaUses({ ...derived, named: { bus: volts(389), energy: absent }, stress: [] })).toEqual([]);
  });
});
