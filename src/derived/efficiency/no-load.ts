import type { Entry, Fact } from '../../entry/entry.ts';
import { methodClass } from '../../entry/method-class.ts';
import { yearlyEnergy } from '../../formulas/energy/yearly-energy.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { isOf, factValue } from '../fact-value.ts';
import { lineVolts } from '../line-volts.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { NoLoadFigure } from './efficiency-figures.ts';

/** What the device takes with nothing plugged in, by line voltage, and what that comes to in a year. */
export function noLoadFigures({ measurements }: Entry): readonly NoLoadFigure[] {
  return measurements.flatMap(({ subject, value, conditions, method, instrument }) => {
    if (subject !== 'standby' || !isOf(value, 'power') || conditions['load'] !== undefined) return [];
    const power = factValue(value);
    const isReported = methodClass(method, instrument) === 'reported';
    return [
      { line: lineVolts(conditions['line']), isReported, power, span: spanOf(power, value), yearly: applyFormula(yearlyEnergy, { power }) },
    ];
  });
}

/** Both ends of what is certain, in watts; a bound such as "< 75 mW" is certain on one side, and nothing takes less than none. */
function spanOf(power: Known<'power'>, { quantity: { low, high } }: Fact): NoLoadFigure['span'] {
  if (!isMissing(power)) return { low: power.low, high: power.high };
  return high === null ? null : { low: low ?? 0, high };
}
