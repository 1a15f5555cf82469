import { flybackDuty } from '../../formulas/flyback/flyback-duty.ts';
import { forwardDuty } from '../../formulas/forward/forward-duty.ts';
import { llcWantedGain } from '../../formulas/llc/llc-wanted-gain.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { reflectedAt } from './reflected.ts';
import type { RatioAsk, StageGiven } from './stage-model.ts';

/** Between these values blocks of the kind are built; far wider than any design that was read (common practice). */
const FLYBACK_DUTY = { least: 0.05, most: 0.85 };
const FORWARD_DUTY = { least: 0.03, most: 0.95 };
const LLC_GAIN = { least: 0.3, most: 2.5 };

/** Duty that a flyback needs for its highest output at its lowest input. */
export function flybackAsks(given: StageGiven): RatioAsk {
  const value = applyFormula(flybackDuty, { reflected: reflectedAt(given, given.output.highest), input: given.input.lowest });
  return { name: 'duty for the highest output at the lowest bus', value, ...FLYBACK_DUTY };
}

/** Duty that a forward, or an asymmetrical half bridge, needs for its highest output at its lowest input. */
export function forwardAsks(given: StageGiven): RatioAsk {
  const { turnsRatio, output, input } = given;
  const value = applyFormula(forwardDuty, { turnsRatio, output: output.highest, input: input.lowest });
  return { name: 'duty for the highest output at the lowest bus', value, ...FORWARD_DUTY };
}

/** Gain that an LLC tank needs for its highest output at the highest bus. */
export function llcAsks({ turnsRatio, output, input }: StageGiven): RatioAsk {
  const value = applyFormula(llcWantedGain, { turnsRatio, output: output.highest, input: input.highest });
  return { name: 'gain for the highest output at the highest bus', value, ...LLC_GAIN };
}
