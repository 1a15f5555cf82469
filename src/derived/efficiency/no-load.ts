import type { Entry, Fact } from '../../entry/entry.ts';
import { methodClass } from '../../entry/method-class.ts';
import { yearlyEnergy } from '../../formulas/energy/yearly-energy.ts';
import { readQuantity } from '../../units/read-quantity.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { isOf, factValue } from '../fact-value.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { NoLoadFigure } from './efficiency-figures.ts';

/** What the device takes with nothing plugged in, by line voltage, and what that comes to in a year. */
export function noLoadFigures({ measurements }: Entry): readonly NoLoadFigure[] {
  return measurements.flatMap(({ subject, value, conditions, method, instrument }) => {
    if (subject !== 'standby' || !isOf(value, 'power') || conditions['load'] !== undefined) return [];
    const power = factValue(value);
    const isReported = methodClass(method, instrument) === 'reported';
    return [
      { line: voltsOf(conditions['line']), isReported, power, span: spanOf(power, value), yearly: applyFormula(yearlyEnergy, { power }) },
    ];
  });
}

/** "230 V 50 Hz" is 230. */
function voltsOf(line: string | undefined): number | null {
  const read = readQuantity((line ?? '').replace(/[\s,/]+\d+(?:[.,]\d+)?\s*Hz\b.*$/iu, ''), 'voltage');
  return read.ok ? read.value.nominal : null;
}

/** Both ends of what is certain, in watts; a bound such as "< 75 mW" is certain on one side, and nothing takes less than none. */
function spanOf(power: Known<'power'>, { quantity: { low, high } }: Fact): NoLoadFigure['span'] {
  if (!isMissing(power)) return { low: power.low, high: power.high };
  return high === null ? null : { low: low ?? 0, high };
}
