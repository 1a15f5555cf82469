import type { Formula } from '../../values/formula.ts';
import { halfBridgeFlybackCapacitor } from './half-bridge-flyback-capacitor.ts';
import { halfBridgeFlybackOutput } from './half-bridge-flyback-output.ts';
import { halfBridgeFlybackRectifier } from './half-bridge-flyback-rectifier.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const HALF_BRIDGE_FLYBACK_FORMULAS: readonly Formula[] = [
  halfBridgeFlybackCapacitor,
  halfBridgeFlybackOutput,
  halfBridgeFlybackRectifier,
];
