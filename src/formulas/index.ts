import type { Formula } from '../values/formula.ts';
import { bulkCapacitancePerWatt } from './bulk/bulk-capacitance-per-watt.ts';
import { holdUpCapacitance } from './bulk/hold-up-capacitance.ts';
import { holdUpEndVoltage } from './bulk/hold-up-end-voltage.ts';
import { holdUpTime } from './bulk/hold-up-time.ts';
import { storedEnergy } from './bulk/stored-energy.ts';
import { capacitanceWithTolerance } from './capacitor/capacitance-with-tolerance.ts';
import { largestDischargeResistance } from './capacitor/largest-discharge-resistance.ts';
import { parallelCapacitance } from './capacitor/parallel-capacitance.ts';
import { rcDischargeTime } from './capacitor/rc-discharge-time.ts';
import { rcVoltageAfter } from './capacitor/rc-voltage-after.ts';
import { seriesCapacitance } from './capacitor/series-capacitance.ts';
import { yCapacitorCurrent } from './capacitor/y-capacitor-current.ts';
import { batteryEnergy } from './energy/battery-energy.ts';
import { electricPower } from './energy/electric-power.ts';
import { energyRatio } from './energy/energy-ratio.ts';
import { powerDensity } from './energy/power-density.ts';
import { specificPower } from './energy/specific-power.ts';
import { clampedSwitchVoltage } from './flyback/clamped-switch-voltage.ts';
import { reflectedVoltage } from './flyback/reflected-voltage.ts';
import { switchOffStateVoltage } from './flyback/switch-off-state-voltage.ts';
import { switchVoltageWithSpike } from './flyback/switch-voltage-with-spike.ts';
import { turnsRatio } from './flyback/turns-ratio.ts';
import { boxVolume } from './geometry/box-volume.ts';
import { cylinderVolume } from './geometry/cylinder-volume.ts';
import { apparentPower } from './mains/apparent-power.ts';
import { highLine } from './mains/high-line.ts';
import { inputCurrent } from './mains/input-current.ts';
import { mainsPeak } from './mains/mains-peak.ts';
import { powerFactor } from './mains/power-factor.ts';
import { centreTapReverseVoltage } from './rectifier/centre-tap-reverse-voltage.ts';
import { rectifierReverseVoltage } from './rectifier/rectifier-reverse-voltage.ts';
import { parallelResistance } from './resistor/parallel-resistance.ts';
import { resistorDissipation } from './resistor/resistor-dissipation.ts';
import { seriesResistance } from './resistor/series-resistance.ts';
import { sumOfShares } from './sharing/sum-of-shares.ts';
import { unusedPower } from './sharing/unused-power.ts';
import { currentStressRatio } from './stress/current-stress-ratio.ts';
import { voltageStressRatio } from './stress/voltage-stress-ratio.ts';

/** Every formula, by subject folder and then by name. A test compares this list with the folders. */
export const FORMULAS: readonly Formula[] = [
  bulkCapacitancePerWatt,
  holdUpCapacitance,
  holdUpEndVoltage,
  holdUpTime,
  storedEnergy,
  capacitanceWithTolerance,
  largestDischargeResistance,
  parallelCapacitance,
  rcDischargeTime,
  rcVoltageAfter,
  seriesCapacitance,
  yCapacitorCurrent,
  batteryEnergy,
  electricPower,
  energyRatio,
  powerDensity,
  specificPower,
  clampedSwitchVoltage,
  reflectedVoltage,
  switchOffStateVoltage,
  switchVoltageWithSpike,
  turnsRatio,
  boxVolume,
  cylinderVolume,
  apparentPower,
  highLine,
  inputCurrent,
  mainsPeak,
  powerFactor,
  centreTapReverseVoltage,
  rectifierReverseVoltage,
  parallelResistance,
  resistorDissipation,
  seriesResistance,
  sumOfShares,
  unusedPower,
  currentStressRatio,
  voltageStressRatio,
];

/** The formula with this id, which an origin or a page address names; null where there is none. */
export function formulaOf(id: string): Formula | null {
  return FORMULAS.find((formula) => formula.id === id) ?? null;
}
