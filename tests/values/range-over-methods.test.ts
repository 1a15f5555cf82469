import { describe, expect, it } from 'vitest';
import { clampedSwitchVoltage } from '../../src/formulas/flyback/clamped-switch-voltage.ts';
import { switchVoltageBulkAllowance } from '../../src/formulas/flyback/switch-voltage-bulk-allowance.ts';
import { switchVoltageClampMultiple } from '../../src/formulas/flyback/switch-voltage-clamp-multiple.ts';
import { switchVoltageHalfOvershoot } from '../../src/formulas/flyback/switch-voltage-half-overshoot.ts';
import { switchVoltageOfMethods } from '../../src/formulas/flyback/switch-voltage-of-methods.ts';
import { applyFormula } from '../../src/values/apply-formula.ts';
import { missing } from '../../src/values/missing.ts';
import { rangeOverMethods } from '../../src/values/range-over-methods.ts';
import { isMissing } from '../../src/values/value.ts';
import { measuredValue } from './a-quantity.ts';

/** The design of Fairchild AN-4137, appendix: 375 V, 85 V reflected, clamp at 172 V. */
const input = measuredValue('voltage', 375, 375, 375, 3);
const reflected = measuredValue('voltage', 85, 85, 85, 3);
const clamp = measuredValue('voltage', 172, 172, 172, 3);
const METHODS = {
  clampAnalysis: applyFormula(clampedSwitchVoltage, { input, clamp }),
  halfOvershoot: applyFormula(switchVoltageHalfOvershoot, { input, reflected }),
  bulkAllowance: applyFormula(switchVoltageBulkAllowance, { input, reflected }),
  clampMultiple: applyFormula(switchVoltageClampMultiple, { input, reflected }),
};

describe('a spike that four papers reckon in four ways', () => {
  const range = rangeOverMethods(switchVoltageOfMethods, METHODS);

  it('is shown from 502 V to 588 V, not as one number', () => {
    if (isMissing(range)) throw new Error(range.reason);
    expect([range.low, range.nominal, range.high]).toEqual([502.5, 552.375, 587.5]);
  });

  it('holds every method in its trace, by name', () => {
    if (isMissing(range) || range.origin.evidence !== 'computed') throw new Error('not computed');
    expect(Object.keys(range.origin.inputs)).toEqual(Object.keys(METHODS));
  });

  it('supports no more digits than the methods agree to', () => {
    if (isMissing(range)) throw new Error(range.reason);
    expect(range.significant).toBeLessThanOrEqual(2);
  });

  it('leaves out a method whose inputs are missing', () => {
    const partial = rangeOverMethods(switchVoltageOfMethods, { ...METHODS, clampAnalysis: missing('clamp not known', ['clamp']) });
    if (isMissing(partial)) throw new Error(partial.reason);
    expect([partial.low, partial.high]).toEqual([502.5, 587.5]);
    expect(Math.abs(partial.nominal - (502.5 + 572.5 + 587.5) / 3)).toBeLessThan(1e-9);
  });

  it('is missing where every method is', () => {
    const none = rangeOverMethods(switchVoltageOfMethods, { clampAnalysis: missing('clamp not known', ['clamp']) });
    expect(none).toEqual({ missing: true, reason: 'clamp not known', needs: ['clamp'] });
  });
});
