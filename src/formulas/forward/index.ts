import type { Formula } from '../../values/formula.ts';
import { forwardClampVoltage } from './forward-clamp-voltage.ts';
import { forwardDuty } from './forward-duty.ts';
import { forwardLargestDutyClamped } from './forward-largest-duty-clamped.ts';
import { forwardLargestDuty } from './forward-largest-duty.ts';
import { forwardRectifierVoltage } from './forward-rectifier-voltage.ts';
import { forwardResetDiodeVoltage } from './forward-reset-diode-voltage.ts';
import { forwardResetRatio } from './forward-reset-ratio.ts';
import { forwardResetVoltage } from './forward-reset-voltage.ts';
import { forwardSwitchVoltage } from './forward-switch-voltage.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const FORWARD_FORMULAS: readonly Formula[] = [
  forwardClampVoltage,
  forwardDuty,
  forwardLargestDuty,
  forwardLargestDutyClamped,
  forwardRectifierVoltage,
  forwardResetDiodeVoltage,
  forwardResetRatio,
  forwardResetVoltage,
  forwardSwitchVoltage,
];
