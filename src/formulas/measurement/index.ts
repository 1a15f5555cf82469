import type { Formula } from '../../values/formula.ts';
import { instrumentUncertainty } from './instrument-uncertainty.ts';
import { lineRegulation } from './line-regulation.ts';
import { loadRegulation } from './load-regulation.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const MEASUREMENT_FORMULAS: readonly Formula[] = [instrumentUncertainty, lineRegulation, loadRegulation];
