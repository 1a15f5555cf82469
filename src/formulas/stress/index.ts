import type { Formula } from '../../values/formula.ts';
import { currentStressRatio } from './current-stress-ratio.ts';
import { voltageStressRatio } from './voltage-stress-ratio.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const STRESS_FORMULAS: readonly Formula[] = [currentStressRatio, voltageStressRatio];
