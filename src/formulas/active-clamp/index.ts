import type { Formula } from '../../values/formula.ts';
import { activeClampCapacitance } from './active-clamp-capacitance.ts';
import { activeClampInductance } from './active-clamp-inductance.ts';
import { activeClampLargestRatio } from './active-clamp-largest-ratio.ts';
import { activeClampSmallestRatio } from './active-clamp-smallest-ratio.ts';
import { clampCapacitorPeakVoltage } from './clamp-capacitor-peak-voltage.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const ACTIVE_CLAMP_FORMULAS: readonly Formula[] = [
  activeClampCapacitance,
  activeClampInductance,
  activeClampLargestRatio,
  activeClampSmallestRatio,
  clampCapacitorPeakVoltage,
];
