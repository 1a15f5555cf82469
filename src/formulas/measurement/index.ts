import type { Formula } from '../../values/formula.ts';
import { instrumentUncertainty } from './instrument-uncertainty.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const MEASUREMENT_FORMULAS: readonly Formula[] = [instrumentUncertainty];
