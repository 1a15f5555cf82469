import { isMissing, type Known } from '../../values/value.ts';
import { converterCurrents } from './converter-currents.ts';
import { OUTPUT_SIDE } from './secondary-side.ts';
import type { PartHint, StageGiven, StageModel, Stress } from './stage-model.ts';
import { voltageStress } from './stress.ts';

const CURRENTS = converterCurrents('buck-boost');

/** The pair on the input side stands the input, the pair on the output side the output; unless it is said which, the larger. */
function offState(given: StageGiven, { side }: PartHint): Stress {
  if (side === 'input') return voltageStress('off-state voltage', given.input.highest, 'highest input');
  if (side === 'output') return voltageStress('off-state voltage', given.output.highest, 'highest output');
  return voltageStress('off-state voltage, worse side', larger(given.input.highest, given.output.highest));
}

function larger(one: Known<'voltage'>, other: Known<'voltage'>): Known<'voltage'> {
  if (isMissing(one)) return one;
  return isMissing(other) || other.high > one.high ? other : one;
}

/** Four-switch buck-boost: each pair of switches stands the voltage of its own side. */
export const BUCK_BOOST_MODEL: StageModel = {
  stresses: {
    ...OUTPUT_SIDE,
    'buck-switch': (given, hint) => [offState(given, hint), CURRENTS.peak(given)],
    'synchronous-rectifier': (given, hint) => [offState(given, hint), CURRENTS.peak(given)],
    'input-capacitor': (given) => [voltageStress('voltage', given.input.highest, 'highest input')],
    inductor: (given) => [CURRENTS.peak(given)],
  },
  operating: CURRENTS.operating,
  rms: CURRENTS.rms,
  assumes: [
    'A switch whose note does not say "input side" or "output side" is held to the larger of both voltages.',
    'Where it steps up, an efficiency of 92 to 98 % if none is given.',
  ],
  refuses: ['The band where input and output are about equal and all four switches work.'],
};
