import type { Formula } from '../../values/formula.ts';
import { fuseRatingNeeded } from './fuse-rating-needed.ts';
import { hotThermistorResistance } from './hot-thermistor-resistance.ts';
import { inrushCurrent } from './inrush-current.ts';
import { meltingIntegralNeeded } from './melting-integral-needed.ts';
import { pulseMeltingIntegral } from './pulse-melting-integral.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const PROTECTION_FORMULAS: readonly Formula[] = [
  fuseRatingNeeded,
  hotThermistorResistance,
  inrushCurrent,
  meltingIntegralNeeded,
  pulseMeltingIntegral,
];
