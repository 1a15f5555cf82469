import type { Formula } from '../../values/formula.ts';
import { capacitorEquivalentTemperature } from './capacitor-equivalent-temperature.ts';
import { capacitorLife } from './capacitor-life.ts';
import { mixedLife } from './mixed-life.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const LIFE_FORMULAS: readonly Formula[] = [capacitorEquivalentTemperature, capacitorLife, mixedLife];
