import { converterCurrents } from './converter-currents.ts';
import { OUTPUT_SIDE } from './secondary-side.ts';
import type { StageModel } from './stage-model.ts';
import { voltageStress } from './stress.ts';

const BOOST_CURRENTS = converterCurrents('boost');

/** Step-up: switch and rectifier stand the output, the input capacitor the input; the inductor carries the input current. */
export const BOOST_MODEL: StageModel = {
  stresses: {
    ...OUTPUT_SIDE,
    'buck-switch': (given) => [voltageStress('off-state voltage', given.output.highest), BOOST_CURRENTS.peak(given)],
    'synchronous-rectifier': (given) => [voltageStress('off-state voltage', given.output.highest), BOOST_CURRENTS.peak(given)],
    'rectifier-diode': (given) => [voltageStress('reverse voltage', given.output.highest)],
    'input-capacitor': (given) => [voltageStress('voltage', given.input.highest, 'highest input')],
    inductor: (given) => [BOOST_CURRENTS.peak(given)],
  },
  operating: BOOST_CURRENTS.operating,
  rms: BOOST_CURRENTS.rms,
  assumes: ['Continuous conduction at full load.', 'Where it steps up, an efficiency of 92 to 98 % if none is given.'],
  refuses: [
    'Ringing of the switching node.',
    'Currents where several ports draw on the block and neither what they share nor its own power is known.',
  ],
};
