import { conductionOf, flybackPeakAtWorst } from './flyback-currents.ts';
import { flybackDuty } from '../../formulas/flyback/flyback-duty.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { highestReflected, reflectedAt } from './reflected.ts';
import type { OperatingValue, StageGiven } from './stage-model.ts';

/** Turns ratio, reflected voltage at the ends of the output range, largest duty and peak current. */
export function flybackOperating(given: StageGiven): readonly OperatingValue[] {
  const highest = highestReflected(given);
  const peak = flybackPeakAtWorst(given).stress;
  const duty = applyFormula(flybackDuty, { reflected: highest, input: given.input.lowest });
  return [
    { name: 'turns ratio', value: given.turnsRatio },
    { name: 'reflected voltage at the highest output', value: highest },
    { name: 'reflected voltage at the lowest output', value: reflectedAt(given, given.output.lowest) },
    ...(conductionOf(given) === 'discontinuous' ? [] : [{ name: 'largest duty', value: duty }]),
    { name: 'peak primary current', value: peak },
  ];
}
