import type { Formula } from '../../values/formula.ts';
import { forwardDuty } from './forward-duty.ts';
import { forwardRectifierVoltage } from './forward-rectifier-voltage.ts';
import { forwardSwitchVoltage } from './forward-switch-voltage.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const FORWARD_FORMULAS: readonly Formula[] = [forwardDuty, forwardRectifierVoltage, forwardSwitchVoltage];
