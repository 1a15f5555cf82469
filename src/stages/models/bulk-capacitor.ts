import { BUS_SIDE } from './bus-side.ts';
import type { StageModel } from './stage-model.ts';

/** Bulk store without PFC: charged to the crest of the highest line, drawn down to a valley at the lowest. */
export const BULK_CAPACITOR_MODEL: StageModel = {
  stresses: BUS_SIDE,
  assumes: ['The capacitance lies within ±20 % of its marking where no tolerance is marked.'],
  refuses: ['The ripple current of the capacitor, which needs the impedance of the mains.'],
};
