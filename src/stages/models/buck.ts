import { converterCurrents } from './converter-currents.ts';
import { OUTPUT_SIDE } from './secondary-side.ts';
import type { StageModel } from './stage-model.ts';
import { voltageStress } from './stress.ts';

const BUCK_CURRENTS = converterCurrents('buck');

/** Step-down: switch, rectifier and input capacitor all stand the input; the output side the output. */
export const BUCK_MODEL: StageModel = {
  stresses: {
    ...OUTPUT_SIDE,
    'buck-switch': (given) => [voltageStress('off-state voltage', given.input.highest, 'highest input'), BUCK_CURRENTS.peak(given)],
    'synchronous-rectifier': (given) => [
      voltageStress('off-state voltage', given.input.highest, 'highest input'),
      BUCK_CURRENTS.peak(given),
    ],
    'rectifier-diode': (given) => [voltageStress('reverse voltage', given.input.highest, 'highest input')],
    'input-capacitor': (given) => [voltageStress('voltage', given.input.highest, 'highest input'), BUCK_CURRENTS.inputRipple(given)],
    inductor: (given) => [BUCK_CURRENTS.peak(given)],
  },
  operating: BUCK_CURRENTS.operating,
  rms: BUCK_CURRENTS.rms,
  assumes: ['The input is what the block before it gives at most.', 'Continuous conduction at full load.'],
  refuses: [
    'Ringing of the switching node.',
    'Currents where several ports draw on the block and neither what they share nor its own power is known.',
  ],
};
