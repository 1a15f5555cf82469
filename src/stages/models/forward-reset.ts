import { clampedSwitchVoltage } from '../../formulas/flyback/clamped-switch-voltage.ts';
import { switchVoltageWithSpike } from '../../formulas/flyback/switch-voltage-with-spike.ts';
import { forwardClampVoltage } from '../../formulas/forward/forward-clamp-voltage.ts';
import { forwardDuty } from '../../formulas/forward/forward-duty.ts';
import { forwardLargestDutyClamped } from '../../formulas/forward/forward-largest-duty-clamped.ts';
import { forwardLargestDuty } from '../../formulas/forward/forward-largest-duty.ts';
import { forwardResetVoltage } from '../../formulas/forward/forward-reset-voltage.ts';
import { forwardSwitchVoltage } from '../../formulas/forward/forward-switch-voltage.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { ResetBalance, StageGiven, Stress } from './stage-model.ts';
import { voltageStress } from './stress.ts';

type Volts = Known<'voltage'>;

/** Voltage across the primary, above the input, while the core is reset at an input voltage. */
function resetVoltage(given: StageGiven, input: Volts): Volts {
  const { id, reset } = given;
  const clamp = given.parameter('clamp', 'voltage', 'high');
  if (reset === null) return missing(`how the core of ${id} is reset is not known`, [`reset of ${id}`]);
  if (reset.by === 'two switches') return input;
  if (reset.by === 'winding') return applyFormula(forwardResetVoltage, { input, resetRatio: reset.ratio });
  if (clamp !== null) return clamp;
  if (reset.by === 'active clamp') return applyFormula(forwardClampVoltage, { input, duty: dutyAt(given, input) });
  return missing(`the voltage at which ${id} resets by ${reset.by} is not known`, [`clamp of ${id}`]);
}

function dutyAt({ turnsRatio, output }: StageGiven, input: Volts): Known<'ratio'> {
  return applyFormula(forwardDuty, { turnsRatio, output: output.highest, input });
}

/** Input and reset voltage on the switch; two switches share them and see the input alone. */
function switchVoltageAt(given: StageGiven, input: Volts): Volts {
  const { reset } = given;
  if (reset?.by === 'two switches') return input;
  if (reset?.by === 'winding') return applyFormula(forwardSwitchVoltage, { input, resetRatio: reset.ratio });
  return applyFormula(clampedSwitchVoltage, { input, clamp: resetVoltage(given, input) });
}

/** What the switch of a forward blocks; an active clamp may be worst at either end of its input. */
export function forwardSwitch(given: StageGiven, quantity = 'off-state voltage'): Stress {
  const plateau = worseEnd(given, (input) => switchVoltageAt(given, input));
  const corner = given.reset?.by === 'active clamp' ? 'worse end of the input' : 'highest line';
  const spike = given.parameter('spike', 'voltage', 'high');
  if (spike === null) return voltageStress(quantity, plateau, corner);
  return voltageStress(`${quantity} with spike`, applyFormula(switchVoltageWithSpike, { plateau, spike }), corner);
}

/** The highest voltage across the primary during reset. */
export function highestResetVoltage(given: StageGiven): Volts {
  return worseEnd(given, (input) => resetVoltage(given, input));
}

/** Only an active clamp has to be looked at from both ends: everything else rises with the input. */
function worseEnd(given: StageGiven, at: (input: Volts) => Volts): Volts {
  const highest = at(given.input.highest);
  return given.reset?.by === 'active clamp' ? worse(highest, at(given.input.lowest)) : highest;
}

/** The larger of two voltages by its upper end; one that is missing could be the larger. */
export function worse(one: Volts, other: Volts): Volts {
  if (isMissing(one) || isMissing(other)) return isMissing(one) ? one : other;
  return other.high > one.high ? other : one;
}

/** The duty that the output asks for at the lowest input beside the largest at which the core is still reset. */
export function forwardResetBalance(given: StageGiven): ResetBalance | null {
  const { reset, input } = given;
  if (reset === null) return null;
  return {
    by: reset.by,
    asked: dutyAt(given, input.lowest),
    stated: given.parameter('duty', 'ratio', 'high'),
    largest: largestDuty(given),
  };
}

function largestDuty(given: StageGiven): Known<'ratio'> {
  const { id, reset, input } = given;
  if (reset?.by === 'winding' || reset?.by === 'two switches') return applyFormula(forwardLargestDuty, { resetRatio: reset.ratio });
  if (reset?.by === 'active clamp') return missing(`the clamp of ${id} follows the duty, the controller alone limits it`);
  return applyFormula(forwardLargestDutyClamped, { clamp: resetVoltage(given, input.lowest), input: input.lowest });
}
