import type { Formula } from '../../values/formula.ts';
import { resistanceForDrop } from './resistance-for-drop.ts';
import { senseLimitCurrent } from './sense-limit-current.ts';
import { senseResistance } from './sense-resistance.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const SENSE_FORMULAS: readonly Formula[] = [resistanceForDrop, senseLimitCurrent, senseResistance];
