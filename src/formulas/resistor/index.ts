import type { Formula } from '../../values/formula.ts';
import { currentIntoResistance } from './current-into-resistance.ts';
import { parallelResistance } from './parallel-resistance.ts';
import { resistorDissipation } from './resistor-dissipation.ts';
import { seriesResistance } from './series-resistance.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const RESISTOR_FORMULAS: readonly Formula[] = [currentIntoResistance, parallelResistance, resistorDissipation, seriesResistance];
