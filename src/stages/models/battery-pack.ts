import type { StageModel } from './stage-model.ts';
import { voltageStress } from './stress.ts';

/** Battery pack: its switches block the voltage of the full pack, charging or discharging. */
export const BATTERY_PACK_MODEL: StageModel = {
  stresses: { 'load-switch': (given) => [voltageStress('off-state voltage', given.output.highest, 'full pack')] },
  operating: (given) => [
    { name: 'voltage of the full pack', value: given.output.highest },
    { name: 'voltage of the empty pack', value: given.output.lowest },
  ],
  assumes: ['4.2 V for a full lithium-ion cell and 3.6 V for a full iron phosphate one, where no over-voltage is given.'],
  refuses: ['The current of a short at the terminals.', 'The condition of a cell.'],
};
