import type { Formula } from '../../values/formula.ts';
import { alternatingPart } from './alternating-part.ts';
import { clampLoss } from './clamp-loss.ts';
import { clampResistance } from './clamp-resistance.ts';
import { clampVoltage } from './clamp-voltage.ts';
import { clampedSwitchVoltage } from './clamped-switch-voltage.ts';
import { flybackBoundaryPeak } from './flyback-boundary-peak.ts';
import { flybackDcmDuty } from './flyback-dcm-duty.ts';
import { flybackDcmOutputRipple } from './flyback-dcm-output-ripple.ts';
import { flybackDcmPeakFromPower } from './flyback-dcm-peak-from-power.ts';
import { flybackDcmSecondaryRms } from './flyback-dcm-secondary-rms.ts';
import { flybackDuty } from './flyback-duty.ts';
import { flybackInductance } from './flyback-inductance.ts';
import { flybackOffDuty } from './flyback-off-duty.ts';
import { flybackOutputCapacitance } from './flyback-output-capacitance.ts';
import { flybackOutputRipple } from './flyback-output-ripple.ts';
import { flybackPeakCurrent } from './flyback-peak-current.ts';
import { flybackSecondaryRms } from './flyback-secondary-rms.ts';
import { inductanceFromRamp } from './inductance-from-ramp.ts';
import { outputCapacitancePerCycle } from './output-capacitance-per-cycle.ts';
import { primaryFromSecondary } from './primary-from-secondary.ts';
import { pulseMean } from './pulse-mean.ts';
import { rampCurrent } from './ramp-current.ts';
import { reflectedVoltage } from './reflected-voltage.ts';
import { reflectedVoltageFromDuty } from './reflected-voltage-from-duty.ts';
import { reflectedVoltageLimit } from './reflected-voltage-limit.ts';
import { secondaryPeakCurrent } from './secondary-peak-current.ts';
import { secondaryPeakFromOutput } from './secondary-peak-from-output.ts';
import { secondaryPulseCurrent } from './secondary-pulse-current.ts';
import { switchOffStateVoltage } from './switch-off-state-voltage.ts';
import { switchVoltageBulkAllowance } from './switch-voltage-bulk-allowance.ts';
import { switchVoltageClampMultiple } from './switch-voltage-clamp-multiple.ts';
import { switchVoltageHalfOvershoot } from './switch-voltage-half-overshoot.ts';
import { switchVoltageOfMethods } from './switch-voltage-of-methods.ts';
import { switchVoltageWithSpike } from './switch-voltage-with-spike.ts';
import { trapezoidRms } from './trapezoid-rms.ts';
import { triangleMean } from './triangle-mean.ts';
import { triangleRms } from './triangle-rms.ts';
import { turnsRatio } from './turns-ratio.ts';
import { turnsRatioByWindingVoltages } from './turns-ratio-by-winding-voltages.ts';
import { turnsRatioFromVoltages } from './turns-ratio-from-voltages.ts';
import { voltageWithMargin } from './voltage-with-margin.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const FLYBACK_FORMULAS: readonly Formula[] = [
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
  turnsRatioByWindingVoltages,
  turnsRatioFromVoltages,
  voltageWithMargin,
];
