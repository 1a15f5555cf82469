import type { Formula } from '../../values/formula.ts';
import { cableLoopResistance } from './cable-loop-resistance.ts';
import { cableVoltageDrop } from './cable-voltage-drop.ts';
import { highestSourceVoltage } from './highest-source-voltage.ts';
import { lowestCableEndVoltage } from './lowest-cable-end-voltage.ts';
import { lowestSourceVoltage } from './lowest-source-voltage.ts';
import { measuredDrop } from './measured-drop.ts';
import { powerAfterCable } from './power-after-cable.ts';
import { resistanceOfDrop } from './resistance-of-drop.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const CABLE_FORMULAS: readonly Formula[] = [
  cableLoopResistance,
  cableVoltageDrop,
  highestSourceVoltage,
  lowestCableEndVoltage,
  lowestSourceVoltage,
  measuredDrop,
  powerAfterCable,
  resistanceOfDrop,
];
