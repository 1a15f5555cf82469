import { BUS_SIDE } from './bus-side.ts';
import type { StageModel } from './stage-model.ts';

/** Parts before the rectifier. Fuse, varistor and X capacitor meet the supply itself, whatever block they are named under. */
export const INPUT_FILTER_MODEL: StageModel = {
  stresses: BUS_SIDE,
  assumes: ['The mains may be 10 % above the highest printed voltage, unless 264 V or more is printed.'],
  refuses: ['Surges: what a varistor lets through is not worked out.'],
};
