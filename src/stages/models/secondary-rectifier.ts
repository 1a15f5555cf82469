import { OUTPUT_SIDE } from './secondary-side.ts';
import type { StageModel } from './stage-model.ts';

/** Rectification as a block of its own: what its rectifiers block is the affair of the converter before it, whose model is asked. */
export const SECONDARY_RECTIFIER_MODEL: StageModel = {
  stresses: OUTPUT_SIDE,
  assumes: ['A drop of up to 0.1 V for synchronous rectifiers and of 0.4 to 1.2 V for diodes.'],
  refuses: ['Ringing, which depends on the leakage and the snubber: give the spike as seen.'],
};
