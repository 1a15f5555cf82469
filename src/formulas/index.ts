import type { Formula } from '../values/formula.ts';
import { bulkCapacitanceForMinimum } from './bulk/bulk-capacitance-for-minimum.ts';
import { bulkCapacitancePerWatt } from './bulk/bulk-capacitance-per-watt.ts';
import { bulkMinimumVoltage } from './bulk/bulk-minimum-voltage.ts';
import { bulkMinimumVoltageByDuty } from './bulk/bulk-minimum-voltage-by-duty.ts';
import { bulkMinimumVoltageExact } from './bulk/bulk-minimum-voltage-exact.ts';
import { chargingCurrentMean } from './bulk/charging-current-mean.ts';
import { chargingCurrentPeak } from './bulk/charging-current-peak.ts';
import { conductionAngle } from './bulk/conduction-angle.ts';
import { halfWaveCapacitance } from './bulk/half-wave-capacitance.ts';
import { holdUpCapacitance } from './bulk/hold-up-capacitance.ts';
import { holdUpEndVoltage } from './bulk/hold-up-end-voltage.ts';
import { holdUpTime } from './bulk/hold-up-time.ts';
import { rectifiedCrest } from './bulk/rectified-crest.ts';
import { rectifiedMeanVoltage } from './bulk/rectified-mean-voltage.ts';
import { rectifierMean } from './bulk/rectifier-mean.ts';
import { rectifierRipple } from './bulk/rectifier-ripple.ts';
import { smoothedMeanVoltage } from './bulk/smoothed-mean-voltage.ts';
import { smoothingCapacitance } from './bulk/smoothing-capacitance.ts';
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
import { inputPower } from './mains/input-power.ts';
import { mainsPeak } from './mains/mains-peak.ts';
import { powerFactor } from './mains/power-factor.ts';
import { bridgeLoss } from './pfc/bridge-loss.ts';
import { bridgeMeanCurrent } from './pfc/bridge-mean-current.ts';
import { busCapacitanceForRipple } from './pfc/bus-capacitance-for-ripple.ts';
import { busRipple } from './pfc/bus-ripple.ts';
import { busRippleCurrent } from './pfc/bus-ripple-current.ts';
import { busRippleCurrentAtLine } from './pfc/bus-ripple-current-at-line.ts';
import { pfcCcmDiodeRms } from './pfc/pfc-ccm-diode-rms.ts';
import { pfcCcmInductance } from './pfc/pfc-ccm-inductance.ts';
import { pfcCcmPeakCurrent } from './pfc/pfc-ccm-peak-current.ts';
import { pfcCcmSwitchRms } from './pfc/pfc-ccm-switch-rms.ts';
import { pfcCcmValleyCurrent } from './pfc/pfc-ccm-valley-current.ts';
import { pfcCrmDiodeRms } from './pfc/pfc-crm-diode-rms.ts';
import { pfcCrmInductance } from './pfc/pfc-crm-inductance.ts';
import { pfcCrmInductorRms } from './pfc/pfc-crm-inductor-rms.ts';
import { pfcCrmPeakCurrent } from './pfc/pfc-crm-peak-current.ts';
import { pfcCrmSwitchRms } from './pfc/pfc-crm-switch-rms.ts';
import { pfcDiodeMean } from './pfc/pfc-diode-mean.ts';
import { pfcDuty } from './pfc/pfc-duty.ts';
import { pfcOnTime } from './pfc/pfc-on-time.ts';
import { totemPoleLegRms } from './pfc/totem-pole-leg-rms.ts';
import { centreTapReverseVoltage } from './rectifier/centre-tap-reverse-voltage.ts';
import { rectifierReverseVoltage } from './rectifier/rectifier-reverse-voltage.ts';
import { parallelResistance } from './resistor/parallel-resistance.ts';
import { resistorDissipation } from './resistor/resistor-dissipation.ts';
import { seriesResistance } from './resistor/series-resistance.ts';
import { powerDrop } from './sharing/power-drop.ts';
import { sumOfShares } from './sharing/sum-of-shares.ts';
import { testLoadFactor } from './sharing/test-load-factor.ts';
import { unusedPower } from './sharing/unused-power.ts';
import { currentStressRatio } from './stress/current-stress-ratio.ts';
import { voltageStressRatio } from './stress/voltage-stress-ratio.ts';

/** Every formula, by subject folder and then by name. A test compares this list with the folders. */
export const FORMULAS: readonly Formula[] = [
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
  inputPower,
  mainsPeak,
  powerFactor,
  bridgeLoss,
  bridgeMeanCurrent,
  busCapacitanceForRipple,
  busRipple,
  busRippleCurrent,
  busRippleCurrentAtLine,
  pfcCcmDiodeRms,
  pfcCcmInductance,
  pfcCcmPeakCurrent,
  pfcCcmSwitchRms,
  pfcCcmValleyCurrent,
  pfcCrmDiodeRms,
  pfcCrmInductance,
  pfcCrmInductorRms,
  pfcCrmPeakCurrent,
  pfcCrmSwitchRms,
  pfcDiodeMean,
  pfcDuty,
  pfcOnTime,
  totemPoleLegRms,
  centreTapReverseVoltage,
  rectifierReverseVoltage,
  parallelResistance,
  resistorDissipation,
  seriesResistance,
  powerDrop,
  sumOfShares,
  testLoadFactor,
  unusedPower,
  currentStressRatio,
  voltageStressRatio,
];

/** The formula with this id, which an origin or a page address names; null where there is none. */
export function formulaOf(id: string): Formula | null {
  return FORMULAS.find((formula) => formula.id === id) ?? null;
}
