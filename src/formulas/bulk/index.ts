import type { Formula } from '../../values/formula.ts';
import { bulkCapacitanceForMinimum } from './bulk-capacitance-for-minimum.ts';
import { bulkCapacitancePerWatt } from './bulk-capacitance-per-watt.ts';
import { bulkMinimumVoltage } from './bulk-minimum-voltage.ts';
import { bulkMinimumVoltageByDuty } from './bulk-minimum-voltage-by-duty.ts';
import { bulkMinimumVoltageExact } from './bulk-minimum-voltage-exact.ts';
import { chargingCurrentMean } from './charging-current-mean.ts';
import { chargingCurrentPeak } from './charging-current-peak.ts';
import { conductionAngle } from './conduction-angle.ts';
import { halfWaveCapacitance } from './half-wave-capacitance.ts';
import { holdUpCapacitance } from './hold-up-capacitance.ts';
import { holdUpEndVoltage } from './hold-up-end-voltage.ts';
import { holdUpTime } from './hold-up-time.ts';
import { rectifiedCrest } from './rectified-crest.ts';
import { rectifiedMeanVoltage } from './rectified-mean-voltage.ts';
import { rectifierMean } from './rectifier-mean.ts';
import { rectifierRipple } from './rectifier-ripple.ts';
import { smoothedMeanVoltage } from './smoothed-mean-voltage.ts';
import { smoothingCapacitance } from './smoothing-capacitance.ts';
import { storedEnergy } from './stored-energy.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const BULK_FORMULAS: readonly Formula[] = [
  bulkCapacitanceForMinimum,
  bulkCapacitancePerWatt,
  bulkMinimumVoltage,
  bulkMinimumVoltageByDuty,
  bulkMinimumVoltageExact,
  chargingCurrentMean,
  chargingCurrentPeak,
  conductionAngle,
  halfWaveCapacitance,
  holdUpCapacitance,
  holdUpEndVoltage,
  holdUpTime,
  rectifiedCrest,
  rectifiedMeanVoltage,
  rectifierMean,
  rectifierRipple,
  smoothedMeanVoltage,
  smoothingCapacitance,
  storedEnergy,
];
