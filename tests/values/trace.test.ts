import { describe, expect, it } from 'vitest';
import { storedEnergy } from '../../src/formulas/bulk/stored-energy.ts';
import { mainsPeak } from '../../src/formulas/mains/mains-peak.ts';
import { parallelCapacitance } from '../../src/formulas/capacitor/parallel-capacitance.ts';
import { applyFormula } from '../../src/values/apply-formula.ts';
import { assume } from '../../src/values/assume.ts';
import { foldFormula } from '../../src/values/fold-formula.ts';
import { restsOnAssumption } from '../../src/values/trace.ts';
import { isMissing, type Known, type Value } from '../../src/values/value.ts';
import { measuredValue } from './a-quantity.ts';

const SOURCE = { title: 'test', section: 'test', standing: 'common practice' } as const;

describe('the trace of a value', () => {
  it('knows an assumption however deep it stands', () => {
    const peak = applyFormula(mainsPeak, { rms: assume('voltage', 264, 264, 264, 'high line', SOURCE) });
    const energy = present(applyFormula(storedEnergy, { capacitance: measuredValue('capacitance', 1e-4, 1e-4, 1e-4), voltage: peak }));
    expect(restsOnAssumption(energy)).toBe(true);
  });

  it('is free of assumptions where everything was read', () => {
    const peak = present(applyFormula(mainsPeak, { rms: measuredValue('voltage', 230, 230, 230) }));
    expect(restsOnAssumption(peak)).toBe(false);
  });
});

describe('folding a relation of two', () => {
  const add = (first: Known<'capacitance'>, second: Known<'capacitance'>): Known<'capacitance'> =>
    applyFormula(parallelCapacitance, { first, second });

  it('adds any number', () => {
    const three = [1, 2, 3].map((number) => measuredValue('capacitance', number, number, number));
    expect(foldFormula(three, add, 'capacitance')).toMatchObject({ nominal: 6 });
  });

  it('lets one stand for itself and says when there is none', () => {
    const one = measuredValue('capacitance', 5, 5, 5);
    expect(foldFormula([one], add, 'capacitance')).toBe(one);
    expect(foldFormula([], add, 'capacitance')).toMatchObject({ missing: true, needs: ['capacitance'] });
  });
});

function present<V extends Value>(known: V | { readonly missing: true; readonly reason: string; readonly needs: readonly string[] }): V {
  if (isMissing(known)) throw new Error('expected a value');
  // Checked on the line above.
  return known;
}
