import type { Formula } from '../../values/formula.ts';
import { peakFluxDensity } from './peak-flux-density.ts';
import { transformerTurns } from './transformer-turns.ts';
import { windingTurns } from './winding-turns.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const MAGNETICS_FORMULAS: readonly Formula[] = [peakFluxDensity, transformerTurns, windingTurns];
