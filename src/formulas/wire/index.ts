import type { Formula } from '../../values/formula.ts';
import { circularMilArea } from './circular-mil-area.ts';
import { gaugeArea } from './gauge-area.ts';
import { traceWidth } from './trace-width.ts';
import { wireResistance } from './wire-resistance.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const WIRE_FORMULAS: readonly Formula[] = [circularMilArea, gaugeArea, traceWidth, wireResistance];
