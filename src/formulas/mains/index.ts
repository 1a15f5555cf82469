import type { Formula } from '../../values/formula.ts';
import { apparentPower } from './apparent-power.ts';
import { busAgainstNeutral } from './bus-against-neutral.ts';
import { highLine } from './high-line.ts';
import { inputCurrent } from './input-current.ts';
import { inputPower } from './input-power.ts';
import { mainsPeak } from './mains-peak.ts';
import { powerFactor } from './power-factor.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const MAINS_FORMULAS: readonly Formula[] = [
  apparentPower,
  busAgainstNeutral,
  highLine,
  inputCurrent,
  inputPower,
  mainsPeak,
  powerFactor,
];
