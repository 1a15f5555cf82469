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
import { loadCurrent } from './energy/load-current.ts';
import { packVoltage } from './energy/pack-voltage.ts';
import { powerDensity } from './energy/power-density.ts';
import { powerLoss } from './energy/power-loss.ts';
import { specificPower } from './energy/specific-power.ts';
import { sumOfPowers } from './energy/sum-of-powers.ts';
import { alternatingPart } from './flyback/alternating-part.ts';
import { clampLoss } from './flyback/clamp-loss.ts';
import { clampResistance } from './flyback/clamp-resistance.ts';
import { clampVoltage } from './flyback/clamp-voltage.ts';
import { clampedSwitchVoltage } from './flyback/clamped-switch-voltage.ts';
import { flybackBoundaryPeak } from './flyback/flyback-boundary-peak.ts';
import { flybackDcmDuty } from './flyback/flyback-dcm-duty.ts';
import { flybackDcmOutputRipple } from './flyback/flyback-dcm-output-ripple.ts';
import { flybackDcmPeakFromPower } from './flyback/flyback-dcm-peak-from-power.ts';
import { flybackDcmSecondaryRms } from './flyback/flyback-dcm-secondary-rms.ts';
import { flybackDuty } from './flyback/flyback-duty.ts';
import { flybackInductance } from './flyback/flyback-inductance.ts';
import { flybackOffDuty } from './flyback/flyback-off-duty.ts';
import { flybackOutputCapacitance } from './flyback/flyback-output-capacitance.ts';
import { flybackOutputRipple } from './flyback/flyback-output-ripple.ts';
import { flybackPeakCurrent } from './flyback/flyback-peak-current.ts';
import { flybackSecondaryRms } from './flyback/flyback-secondary-rms.ts';
import { inductanceFromRamp } from './flyback/inductance-from-ramp.ts';
import { outputCapacitancePerCycle } from './flyback/output-capacitance-per-cycle.ts';
import { primaryFromSecondary } from './flyback/primary-from-secondary.ts';
import { pulseMean } from './flyback/pulse-mean.ts';
import { rampCurrent } from './flyback/ramp-current.ts';
import { reflectedVoltage } from './flyback/reflected-voltage.ts';
import { reflectedVoltageFromDuty } from './flyback/reflected-voltage-from-duty.ts';
import { reflectedVoltageLimit } from './flyback/reflected-voltage-limit.ts';
import { secondaryPeakCurrent } from './flyback/secondary-peak-current.ts';
import { secondaryPeakFromOutput } from './flyback/secondary-peak-from-output.ts';
import { secondaryPulseCurrent } from './flyback/secondary-pulse-current.ts';
import { switchOffStateVoltage } from './flyback/switch-off-state-voltage.ts';
import { switchVoltageBulkAllowance } from './flyback/switch-voltage-bulk-allowance.ts';
import { switchVoltageClampMultiple } from './flyback/switch-voltage-clamp-multiple.ts';
import { switchVoltageHalfOvershoot } from './flyback/switch-voltage-half-overshoot.ts';
import { switchVoltageOfMethods } from './flyback/switch-voltage-of-methods.ts';
import { switchVoltageWithSpike } from './flyback/switch-voltage-with-spike.ts';
import { trapezoidRms } from './flyback/trapezoid-rms.ts';
import { triangleMean } from './flyback/triangle-mean.ts';
import { triangleRms } from './flyback/triangle-rms.ts';
import { turnsRatio } from './flyback/turns-ratio.ts';
import { turnsRatioFromVoltages } from './flyback/turns-ratio-from-voltages.ts';
import { voltageWithMargin } from './flyback/voltage-with-margin.ts';
import { boxVolume } from './geometry/box-volume.ts';
import { cylinderVolume } from './geometry/cylinder-volume.ts';
import { capacitanceForResonance } from './llc/capacitance-for-resonance.ts';
import { characteristicImpedance } from './llc/characteristic-impedance.ts';
import { halfBridgeFundamental } from './llc/half-bridge-fundamental.ts';
import { halfBridgeSwitchRms } from './llc/half-bridge-switch-rms.ts';
import { inductanceByRatio } from './llc/inductance-by-ratio.ts';
import { inductanceForResonance } from './llc/inductance-for-resonance.ts';
import { llcCapacitorAcVoltage } from './llc/llc-capacitor-ac-voltage.ts';
import { llcCapacitorOverloadVoltage } from './llc/llc-capacitor-overload-voltage.ts';
import { llcCapacitorPeakVoltage } from './llc/llc-capacitor-peak-voltage.ts';
import { llcCapacitorRmsVoltage } from './llc/llc-capacitor-rms-voltage.ts';
import { llcCentreTapRms } from './llc/llc-centre-tap-rms.ts';
import { llcGain } from './llc/llc-gain.ts';
import { llcGainIntegrated } from './llc/llc-gain-integrated.ts';
import { llcGainNoLoad } from './llc/llc-gain-no-load.ts';
import { llcLargestGain } from './llc/llc-largest-gain.ts';
import { llcLoadCurrent } from './llc/llc-load-current.ts';
import { llcLoadResistance } from './llc/llc-load-resistance.ts';
import { llcMagnetisingCurrent } from './llc/llc-magnetising-current.ts';
import { llcMagnetisingCurrentTriangle } from './llc/llc-magnetising-current-triangle.ts';
import { llcOutputRipple } from './llc/llc-output-ripple.ts';
import { llcOutputRippleCurrent } from './llc/llc-output-ripple-current.ts';
import { llcPrimaryCurrent } from './llc/llc-primary-current.ts';
import { llcPrimaryCurrentConservative } from './llc/llc-primary-current-conservative.ts';
import { llcPrimaryCurrentResistive } from './llc/llc-primary-current-resistive.ts';
import { llcQualityFactor } from './llc/llc-quality-factor.ts';
import { llcRectifierMean } from './llc/llc-rectifier-mean.ts';
import { llcResonantCapacitance } from './llc/llc-resonant-capacitance.ts';
import { llcResonantFrequency } from './llc/llc-resonant-frequency.ts';
import { llcSecondaryCurrent } from './llc/llc-secondary-current.ts';
import { llcTurnsRatio } from './llc/llc-turns-ratio.ts';
import { sinePeakCurrent } from './llc/sine-peak-current.ts';
import { peakFluxDensity } from './magnetics/peak-flux-density.ts';
import { transformerTurns } from './magnetics/transformer-turns.ts';
import { windingTurns } from './magnetics/winding-turns.ts';
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
import { testLoadCurrent } from './sharing/test-load-current.ts';
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
  loadCurrent,
  packVoltage,
  powerDensity,
  powerLoss,
  specificPower,
  sumOfPowers,
  alternatingPart,
  clampLoss,
  clampResistance,
  clampVoltage,
  clampedSwitchVoltage,
  flybackBoundaryPeak,
  flybackDcmDuty,
  flybackDcmOutputRipple,
  flybackDcmPeakFromPower,
  flybackDcmSecondaryRms,
  flybackDuty,
  flybackInductance,
  flybackOffDuty,
  flybackOutputCapacitance,
  flybackOutputRipple,
  flybackPeakCurrent,
  flybackSecondaryRms,
  inductanceFromRamp,
  outputCapacitancePerCycle,
  primaryFromSecondary,
  pulseMean,
  rampCurrent,
  reflectedVoltage,
  reflectedVoltageFromDuty,
  reflectedVoltageLimit,
  secondaryPeakCurrent,
  secondaryPeakFromOutput,
  secondaryPulseCurrent,
  switchOffStateVoltage,
  switchVoltageBulkAllowance,
  switchVoltageClampMultiple,
  switchVoltageHalfOvershoot,
  switchVoltageOfMethods,
  switchVoltageWithSpike,
  trapezoidRms,
  triangleMean,
  triangleRms,
  turnsRatio,
  turnsRatioFromVoltages,
  voltageWithMargin,
  boxVolume,
  cylinderVolume,
  capacitanceForResonance,
  characteristicImpedance,
  halfBridgeFundamental,
  halfBridgeSwitchRms,
  inductanceByRatio,
  inductanceForResonance,
  llcCapacitorAcVoltage,
  llcCapacitorOverloadVoltage,
  llcCapacitorPeakVoltage,
  llcCapacitorRmsVoltage,
  llcCentreTapRms,
  llcGain,
  llcGainIntegrated,
  llcGainNoLoad,
  llcLargestGain,
  llcLoadCurrent,
  llcLoadResistance,
  llcMagnetisingCurrent,
  llcMagnetisingCurrentTriangle,
  llcOutputRipple,
  llcOutputRippleCurrent,
  llcPrimaryCurrent,
  llcPrimaryCurrentConservative,
  llcPrimaryCurrentResistive,
  llcQualityFactor,
  llcRectifierMean,
  llcResonantCapacitance,
  llcResonantFrequency,
  llcSecondaryCurrent,
  llcTurnsRatio,
  sinePeakCurrent,
  peakFluxDensity,
  transformerTurns,
  windingTurns,
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
  testLoadCurrent,
  testLoadFactor,
  unusedPower,
  currentStressRatio,
  voltageStressRatio,
];

/** The formula with this id, which an origin or a page address names; null where there is none. */
export function formulaOf(id: string): Formula | null {
  return FORMULAS.find((formula) => formula.id === id) ?? null;
}
