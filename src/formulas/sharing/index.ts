import type { Formula } from '../../values/formula.ts';
import { powerDrop } from './power-drop.ts';
import { sumOfShares } from './sum-of-shares.ts';
import { testLoadCurrent } from './test-load-current.ts';
import { testLoadFactor } from './test-load-factor.ts';
import { unusedPower } from './unused-power.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const SHARING_FORMULAS: readonly Formula[] = [powerDrop, sumOfShares, testLoadCurrent, testLoadFactor, unusedPower];
