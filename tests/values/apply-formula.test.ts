import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { storedEnergy } from '../../src/formulas/bulk/stored-energy.ts';
import { holdUpTime } from '../../src/formulas/bulk/hold-up-time.ts';
import { rcDischargeTime } from '../../src/formulas/capacitor/rc-discharge-time.ts';
import { powerDensity } from '../../src/formulas/energy/power-density.ts';
import { centreTapReverseVoltage } from '../../src/formulas/rectifier/centre-tap-reverse-voltage.ts';
import { FORMULAS } from '../../src/formulas/index.ts';
import { applyFormula } from '../../src/values/apply-formula.ts';
import { assume } from '../../src/values/assume.ts';
import { missing } from '../../src/values/missing.ts';
import { isMissing, type Value } from '../../src/values/value.ts';
import { measuredValue } from './a-quantity.ts';

const SOURCE = { title: 'test', section: 'test', standing: 'common practice' } as const;

describe('applying a formula to values', () => {
  it('runs the interval over the corners', () => {
    const energy = applyFormula(storedEnergy, {
      capacitance: measuredValue('capacitance', 96e-6, 120e-6, 144e-6),
      voltage: measuredValue('voltage', 380, 390, 400),
    });
    expect(energy).toMatchObject({ low: 0.5 * 96e-6 * 380 ** 2, nominal: 0.5 * 120e-6 * 390 ** 2, high: 0.5 * 144e-6 * 400 ** 2 });
  });

  it('records the formula and its inputs', () => {
    const inputs = { power: measuredValue('power', 65, 65, 65), volume: measuredValue('volume', 33e-6, 33e-6, 33e-6) };
    expect(applyFormula(powerDensity, inputs)).toMatchObject({ origin: { evidence: 'computed', formula: 'power-density', inputs } });
  });

  it('gives no more digits than the least certain input', () => {
    const inputs = { power: measuredValue('power', 65, 65, 65, 2), volume: measuredValue('volume', 33.2e-6, 33.2e-6, 33.2e-6, 5) };
    expect(applyFormula(powerDensity, inputs)).toMatchObject({ significant: 2 });
  });

  it('takes a printed number as nominal: "65 W" is good to three digits', () => {
    const printed = {
      ...measuredValue('power', 65, 65, 65, 2),
      origin: { evidence: 'printed', written: '65 W', at: 'nameplate' },
    } as const;
    const inputs = { power: printed, volume: measuredValue('volume', 33.2e-6, 33.2e-6, 33.2e-6, 5) };
    expect(applyFormula(powerDensity, inputs)).toMatchObject({ significant: 3 });
  });

  it('lets the interval speak for an input that has one: 2 × (22.4 V + 0 to 0.1 V) is 44.9 V', () => {
    const drop = assume('voltage', 0, 0.05, 0.1, 'drop', SOURCE);
    const reverse = applyFormula(centreTapReverseVoltage, { output: measuredValue('voltage', 22.4, 22.4, 22.4, 3), drop });
    expect(reverse).toMatchObject({ significant: 3 });
  });

  it('gives no more digits than the interval supports', () => {
    const inputs = { power: measuredValue('power', 65, 65, 65, 6), volume: measuredValue('volume', 30e-6, 33e-6, 36e-6, 6) };
    expect(applyFormula(powerDensity, inputs)).toMatchObject({ significant: 3 });
    const wider = { ...inputs, volume: measuredValue('volume', 20e-6, 33e-6, 50e-6, 6) };
    expect(applyFormula(powerDensity, wider)).toMatchObject({ significant: 2 });
  });

  it('does not count the digits of a constant that is exact by convention', () => {
    const end = assume('voltage', 60, 60, 60, 'safe', SOURCE);
    const time = applyFormula(rcDischargeTime, {
      resistance: measuredValue('resistance', 2e6, 2e6, 2e6, 4),
      capacitance: measuredValue('capacitance', 0.47e-6, 0.47e-6, 0.47e-6, 4),
      start: measuredValue('voltage', 373.4, 373.4, 373.4, 4),
      end,
    });
    expect(time).toMatchObject({ significant: 4 });
  });

  it('joins what is missing, each reason once', () => {
    const unknown = missing('mass not given', ['mass']);
    const other = missing('size not given', ['size', 'mass']);
    expect(applyFormula(powerDensity, { power: unknown, volume: other })).toEqual({
      missing: true,
      reason: 'mass not given; size not given',
      needs: ['mass', 'size'],
    });
  });

  it('gives a missing value with the reason instead of infinity or NaN', () => {
    const nothing = applyFormula(powerDensity, { power: measuredValue('power', 65, 65, 65), volume: measuredValue('volume', 0, 0, 0) });
    expect(isMissing(nothing) && nothing.reason).toContain('Power density');
    const rising = applyFormula(holdUpTime, {
      capacitance: measuredValue('capacitance', 1e-4, 1e-4, 1e-4),
      start: measuredValue('voltage', 300, 300, 300),
      end: measuredValue('voltage', 340, 340, 340),
      power: measuredValue('power', 100, 100, 100),
    });
    expect(isMissing(rising) && rising.reason).toContain('start voltage must be above the end voltage');
  });

  it('contains the nominal result and the result of every point inside, for every formula', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...FORMULAS),
        fc.array(fc.tuple(share(), share(), share()), { minLength: 6, maxLength: 6 }),
        (formula, draws) => {
          const keys = Object.keys(formula.inputs);
          const inputs = Object.fromEntries(keys.map((key, index) => [key, spread(draws[index] ?? [0.5, 0.5, 0.5])]));
          const result = applyFormula(formula, inputs);
          if (isMissing(result)) return;
          const inside = formula.compute(
            Object.fromEntries(keys.map((key, index) => [key, within(inputs[key], draws[index]?.[2] ?? 0.5)])),
          );
          const slack = 1e-9 * Math.max(Math.abs(result.low), Math.abs(result.high));
          expect(result.low).toBeLessThanOrEqual(result.nominal);
          expect(result.nominal).toBeLessThanOrEqual(result.high);
          expect(inside).toBeGreaterThanOrEqual(result.low - slack);
          expect(inside).toBeLessThanOrEqual(result.high + slack);
        },
      ),
      { seed: 20_26, numRuns: 2000 },
    );
  });
});

function share(): fc.Arbitrary<number> {
  return fc.double({ min: 0.01, max: 0.99, noNaN: true });
}

function spread([low, middle]: readonly number[]): Value {
  const base = 1 + 99 * (low ?? 0.5);
  return measuredValue('ratio', base, base * (1 + (middle ?? 0.5) / 4), base * 1.5);
}

function within(value: Value | undefined, part: number): number {
  return value === undefined ? 1 : value.low + part * (value.high - value.low);
}
