import type { Formula } from '../../values/formula.ts';
import { capacitanceForResonance } from './capacitance-for-resonance.ts';
import { characteristicImpedance } from './characteristic-impedance.ts';
import { halfBridgeFundamental } from './half-bridge-fundamental.ts';
import { halfBridgeSwitchRms } from './half-bridge-switch-rms.ts';
import { inductanceByRatio } from './inductance-by-ratio.ts';
import { inductanceForResonance } from './inductance-for-resonance.ts';
import { llcCapacitorAcVoltage } from './llc-capacitor-ac-voltage.ts';
import { llcCapacitorOverloadVoltage } from './llc-capacitor-overload-voltage.ts';
import { llcCapacitorPeakVoltage } from './llc-capacitor-peak-voltage.ts';
import { llcCapacitorRmsVoltage } from './llc-capacitor-rms-voltage.ts';
import { llcCentreTapRms } from './llc-centre-tap-rms.ts';
import { llcEquivalentTurnsRatio } from './llc-equivalent-turns-ratio.ts';
import { llcFrequencyForGain } from './llc-frequency-for-gain.ts';
import { llcFrequencyRatio } from './llc-frequency-ratio.ts';
import { llcGainWithTransformer } from './llc-gain-with-transformer.ts';
import { llcGain } from './llc-gain.ts';
import { llcGainIntegrated } from './llc-gain-integrated.ts';
import { llcGainNoLoad } from './llc-gain-no-load.ts';
import { llcInductanceRatio } from './llc-inductance-ratio.ts';
import { llcLargestGain } from './llc-largest-gain.ts';
import { llcLoadCurrent } from './llc-load-current.ts';
import { llcLoadResistance } from './llc-load-resistance.ts';
import { llcMagnetisingCurrent } from './llc-magnetising-current.ts';
import { llcMagnetisingCurrentTriangle } from './llc-magnetising-current-triangle.ts';
import { llcMagnetisingFromOpen } from './llc-magnetising-from-open.ts';
import { llcOutputRipple } from './llc-output-ripple.ts';
import { llcOutputRippleCurrent } from './llc-output-ripple-current.ts';
import { llcPrimaryCurrentOfMethods } from './llc-primary-current-of-methods.ts';
import { llcPrimaryCurrent } from './llc-primary-current.ts';
import { llcPrimaryCurrentConservative } from './llc-primary-current-conservative.ts';
import { llcPrimaryCurrentResistive } from './llc-primary-current-resistive.ts';
import { llcQualityFactor } from './llc-quality-factor.ts';
import { llcRectifierMean } from './llc-rectifier-mean.ts';
import { llcResonantCapacitance } from './llc-resonant-capacitance.ts';
import { llcResonantFrequency } from './llc-resonant-frequency.ts';
import { llcSecondaryCurrent } from './llc-secondary-current.ts';
import { llcSwitchingFrequency } from './llc-switching-frequency.ts';
import { llcTankGain } from './llc-tank-gain.ts';
import { llcTurnsRatio } from './llc-turns-ratio.ts';
import { llcWantedGain } from './llc-wanted-gain.ts';
import { openOverShortInductance } from './open-over-short-inductance.ts';
import { sinePeakCurrent } from './sine-peak-current.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const LLC_FORMULAS: readonly Formula[] = [
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
  llcEquivalentTurnsRatio,
  llcFrequencyForGain,
  llcFrequencyRatio,
  llcGain,
  llcGainIntegrated,
  llcGainNoLoad,
  llcGainWithTransformer,
  llcInductanceRatio,
  llcLargestGain,
  llcLoadCurrent,
  llcLoadResistance,
  llcMagnetisingCurrent,
  llcMagnetisingCurrentTriangle,
  llcMagnetisingFromOpen,
  llcOutputRipple,
  llcOutputRippleCurrent,
  llcPrimaryCurrent,
  llcPrimaryCurrentConservative,
  llcPrimaryCurrentOfMethods,
  llcPrimaryCurrentResistive,
  llcQualityFactor,
  llcRectifierMean,
  llcResonantCapacitance,
  llcResonantFrequency,
  llcSecondaryCurrent,
  llcSwitchingFrequency,
  llcTankGain,
  llcTurnsRatio,
  llcWantedGain,
  openOverShortInductance,
  sinePeakCurrent,
];
