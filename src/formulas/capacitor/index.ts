import type { Formula } from '../../values/formula.ts';
import { capacitanceWithTolerance } from './capacitance-with-tolerance.ts';
import { largestDischargeResistance } from './largest-discharge-resistance.ts';
import { meterOnYCapacitor } from './meter-on-y-capacitor.ts';
import { parallelCapacitance } from './parallel-capacitance.ts';
import { rcCurrentAfter } from './rc-current-after.ts';
import { rcDischargeTime } from './rc-discharge-time.ts';
import { rcTimeConstant } from './rc-time-constant.ts';
import { rcVoltageAfter } from './rc-voltage-after.ts';
import { seriesCapacitance } from './series-capacitance.ts';
import { yCapacitorCurrent } from './y-capacitor-current.ts';
import { yCapacitorCurrentOpenNeutral } from './y-capacitor-current-open-neutral.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const CAPACITOR_FORMULAS: readonly Formula[] = [
  capacitanceWithTolerance,
  largestDischargeResistance,
  meterOnYCapacitor,
  parallelCapacitance,
  rcCurrentAfter,
  rcDischargeTime,
  rcTimeConstant,
  rcVoltageAfter,
  seriesCapacitance,
  yCapacitorCurrent,
  yCapacitorCurrentOpenNeutral,
];
