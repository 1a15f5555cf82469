import type { Formula } from '../values/formula.ts';
import { cableLoopResistance } from './cable/cable-loop-resistance.ts';
import { cableVoltageDrop } from './cable/cable-voltage-drop.ts';
import { lowestCableEndVoltage } from './cable/lowest-cable-end-voltage.ts';
import { activeClampCapacitance } from './active-clamp/active-clamp-capacitance.ts';
import { activeClampInductance } from './active-clamp/active-clamp-inductance.ts';
import { activeClampLargestRatio } from './active-clamp/active-clamp-largest-ratio.ts';
import { activeClampSmallestRatio } from './active-clamp/active-clamp-smallest-ratio.ts';
import { boostDuty } from './buck/boost-duty.ts';
import { boostInductorMean } from './buck/boost-inductor-mean.ts';
import { boostInductorRipple } from './buck/boost-inductor-ripple.ts';
import { buckDuty } from './buck/buck-duty.ts';
import { buckHighSideRms } from './buck/buck-high-side-rms.ts';
import { buckInductance } from './buck/buck-inductance.ts';
import { buckInductorRipple } from './buck/buck-inductor-ripple.ts';
import { buckInputCapacitance } from './buck/buck-input-capacitance.ts';
import { buckInputCapacitorRms } from './buck/buck-input-capacitor-rms.ts';
import { buckLowSideRms } from './buck/buck-low-side-rms.ts';
import { buckOutputRipple } from './buck/buck-output-ripple.ts';
import { inductorPeakCurrent } from './buck/inductor-peak-current.ts';
import { rippleCarryingRms } from './buck/ripple-carrying-rms.ts';
import { rippleShare } from './buck/ripple-share.ts';
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
import { rcCurrentAfter } from './capacitor/rc-current-after.ts';
import { rcDischargeTime } from './capacitor/rc-discharge-time.ts';
import { rcTimeConstant } from './capacitor/rc-time-constant.ts';
import { rcVoltageAfter } from './capacitor/rc-voltage-after.ts';
import { seriesCapacitance } from './capacitor/series-capacitance.ts';
import { yCapacitorCurrent } from './capacitor/y-capacitor-current.ts';
import { yCapacitorCurrentOpenNeutral } from './capacitor/y-capacitor-current-open-neutral.ts';
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
import { boxSurface } from './geometry/box-surface.ts';
import { boxVolume } from './geometry/box-volume.ts';
import { cylinderVolume } from './geometry/cylinder-volume.ts';
import { halfBridgeFlybackCapacitor } from './half-bridge-flyback/half-bridge-flyback-capacitor.ts';
import { halfBridgeFlybackOutput } from './half-bridge-flyback/half-bridge-flyback-output.ts';
import { halfBridgeFlybackRectifier } from './half-bridge-flyback/half-bridge-flyback-rectifier.ts';
import { capacitorEquivalentTemperature } from './life/capacitor-equivalent-temperature.ts';
import { capacitorLife } from './life/capacitor-life.ts';
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
import { llcFrequencyRatio } from './llc/llc-frequency-ratio.ts';
import { llcGain } from './llc/llc-gain.ts';
import { llcGainIntegrated } from './llc/llc-gain-integrated.ts';
import { llcGainNoLoad } from './llc/llc-gain-no-load.ts';
import { llcInductanceRatio } from './llc/llc-inductance-ratio.ts';
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
import { llcWantedGain } from './llc/llc-wanted-gain.ts';
import { sinePeakCurrent } from './llc/sine-peak-current.ts';
import { conductionLoss } from './loss/conduction-loss.ts';
import { deadTimeLoss } from './loss/dead-time-loss.ts';
import { dutyConductionLoss } from './loss/duty-conduction-loss.ts';
import { energyPerCycleLoss } from './loss/energy-per-cycle-loss.ts';
import { forwardDropLoss } from './loss/forward-drop-loss.ts';
import { gateDriveLoss } from './loss/gate-drive-loss.ts';
import { hotResistance } from './loss/hot-resistance.ts';
import { outputCapacitanceLoss } from './loss/output-capacitance-loss.ts';
import { overlapLoss } from './loss/overlap-loss.ts';
import { parallelPartLoss } from './loss/parallel-part-loss.ts';
import { parallelPartsResistance } from './loss/parallel-parts-resistance.ts';
import { powerEfficiency } from './loss/power-efficiency.ts';
import { recoveryLoss } from './loss/recovery-loss.ts';
import { resistiveLoss } from './loss/resistive-loss.ts';
import { seriesResistanceFromDissipation } from './loss/series-resistance-from-dissipation.ts';
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
import { fuseRatingNeeded } from './protection/fuse-rating-needed.ts';
import { hotThermistorResistance } from './protection/hot-thermistor-resistance.ts';
import { inrushCurrent } from './protection/inrush-current.ts';
import { meltingIntegralNeeded } from './protection/melting-integral-needed.ts';
import { pulseMeltingIntegral } from './protection/pulse-melting-integral.ts';
import { centreTapReverseVoltage } from './rectifier/centre-tap-reverse-voltage.ts';
import { inputOverTurns } from './rectifier/input-over-turns.ts';
import { rectifierReverseVoltage } from './rectifier/rectifier-reverse-voltage.ts';
import { windingVoltage } from './rectifier/winding-voltage.ts';
import { parallelResistance } from './resistor/parallel-resistance.ts';
import { resistorDissipation } from './resistor/resistor-dissipation.ts';
import { seriesResistance } from './resistor/series-resistance.ts';
import { resistanceForDrop } from './sense/resistance-for-drop.ts';
import { senseLimitCurrent } from './sense/sense-limit-current.ts';
import { senseResistance } from './sense/sense-resistance.ts';
import { powerDrop } from './sharing/power-drop.ts';
import { sumOfShares } from './sharing/sum-of-shares.ts';
import { testLoadCurrent } from './sharing/test-load-current.ts';
import { testLoadFactor } from './sharing/test-load-factor.ts';
import { unusedPower } from './sharing/unused-power.ts';
import { currentStressRatio } from './stress/current-stress-ratio.ts';
import { voltageStressRatio } from './stress/voltage-stress-ratio.ts';
import { boxSurfaceTemperature } from './thermal/box-surface-temperature.ts';
import { convectedPower } from './thermal/convected-power.ts';
import { heatFlux } from './thermal/heat-flux.ts';
import { junctionTemperature } from './thermal/junction-temperature.ts';
import { radiatedPower } from './thermal/radiated-power.ts';
import { temperatureWithLoss } from './thermal/temperature-with-loss.ts';
import { circularMilArea } from './wire/circular-mil-area.ts';
import { gaugeArea } from './wire/gauge-area.ts';
import { traceWidth } from './wire/trace-width.ts';
import { wireResistance } from './wire/wire-resistance.ts';

/** Every formula, by subject folder and then by name. A test compares this list with the folders. */
export const FORMULAS: readonly Formula[] = [
  activeClampCapacitance,
  activeClampInductance,
  activeClampLargestRatio,
  activeClampSmallestRatio,
  boostDuty,
  boostInductorMean,
  boostInductorRipple,
  buckDuty,
  buckHighSideRms,
  buckInductance,
  buckInductorRipple,
  buckInputCapacitance,
  buckInputCapacitorRms,
  buckLowSideRms,
  buckOutputRipple,
  inductorPeakCurrent,
  rippleCarryingRms,
  rippleShare,
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
  rcCurrentAfter,
  rcDischargeTime,
  rcTimeConstant,
  rcVoltageAfter,
  seriesCapacitance,
  yCapacitorCurrent,
  yCapacitorCurrentOpenNeutral,
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
  boxSurface,
  boxVolume,
  cylinderVolume,
  halfBridgeFlybackCapacitor,
  halfBridgeFlybackOutput,
  halfBridgeFlybackRectifier,
  capacitorEquivalentTemperature,
  capacitorLife,
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
  llcFrequencyRatio,
  llcGain,
  llcGainIntegrated,
  llcGainNoLoad,
  llcInductanceRatio,
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
  llcWantedGain,
  sinePeakCurrent,
  conductionLoss,
  deadTimeLoss,
  dutyConductionLoss,
  energyPerCycleLoss,
  forwardDropLoss,
  gateDriveLoss,
  hotResistance,
  outputCapacitanceLoss,
  overlapLoss,
  parallelPartLoss,
  parallelPartsResistance,
  powerEfficiency,
  recoveryLoss,
  resistiveLoss,
  seriesResistanceFromDissipation,
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
  fuseRatingNeeded,
  hotThermistorResistance,
  inrushCurrent,
  meltingIntegralNeeded,
  pulseMeltingIntegral,
  centreTapReverseVoltage,
  inputOverTurns,
  rectifierReverseVoltage,
  windingVoltage,
  parallelResistance,
  resistorDissipation,
  seriesResistance,
  resistanceForDrop,
  senseLimitCurrent,
  senseResistance,
  powerDrop,
  sumOfShares,
  testLoadCurrent,
  testLoadFactor,
  unusedPower,
  currentStressRatio,
  voltageStressRatio,
  boxSurfaceTemperature,
  convectedPower,
  heatFlux,
  junctionTemperature,
  radiatedPower,
  temperatureWithLoss,
  circularMilArea,
  gaugeArea,
  traceWidth,
  wireResistance,
  cableLoopResistance,
  cableVoltageDrop,
  lowestCableEndVoltage,
];

/** The formula with this id, which an origin or a page address names; null where there is none. */
export function formulaOf(id: string): Formula | null {
  return FORMULAS.find((formula) => formula.id === id) ?? null;
}
