import { OUTPUT_SIDE } from './secondary-side.ts';
import type { StageModel } from './stage-model.ts';

/** Port: its switch blocks and its capacitors hold the highest voltage that the port offers. */
export const PORT_CONTROL_MODEL: StageModel = {
  stresses: OUTPUT_SIDE,
  assumes: ['The port gives no more than it offers.'],
  refuses: ['What a charged device could push back into the port.'],
};
