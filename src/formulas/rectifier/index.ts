import type { Formula } from '../../values/formula.ts';
import { centreTapReverseVoltage } from './centre-tap-reverse-voltage.ts';
import { inputOverTurns } from './input-over-turns.ts';
import { rectifierReverseVoltage } from './rectifier-reverse-voltage.ts';
import { windingVoltage } from './winding-voltage.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const RECTIFIER_FORMULAS: readonly Formula[] = [centreTapReverseVoltage, inputOverTurns, rectifierReverseVoltage, windingVoltage];
