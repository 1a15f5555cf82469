import type { Formula } from '../../values/formula.ts';
import { bridgeLoss } from './bridge-loss.ts';
import { bridgeMeanCurrent } from './bridge-mean-current.ts';
import { busCapacitanceForRipple } from './bus-capacitance-for-ripple.ts';
import { busRipple } from './bus-ripple.ts';
import { busRippleCurrent } from './bus-ripple-current.ts';
import { busRippleCurrentAtLine } from './bus-ripple-current-at-line.ts';
import { pfcCcmDiodeRms } from './pfc-ccm-diode-rms.ts';
import { pfcCcmInductance } from './pfc-ccm-inductance.ts';
import { pfcCcmPeakCurrent } from './pfc-ccm-peak-current.ts';
import { pfcCcmSwitchRms } from './pfc-ccm-switch-rms.ts';
import { pfcCcmValleyCurrent } from './pfc-ccm-valley-current.ts';
import { pfcCrmDiodeRms } from './pfc-crm-diode-rms.ts';
import { pfcCrmInductance } from './pfc-crm-inductance.ts';
import { pfcCrmInductorRms } from './pfc-crm-inductor-rms.ts';
import { pfcCrmPeakCurrent } from './pfc-crm-peak-current.ts';
import { pfcCrmSwitchRms } from './pfc-crm-switch-rms.ts';
import { pfcDiodeMean } from './pfc-diode-mean.ts';
import { pfcDuty } from './pfc-duty.ts';
import { pfcOnTime } from './pfc-on-time.ts';
import { totemPoleLegRms } from './totem-pole-leg-rms.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const PFC_FORMULAS: readonly Formula[] = [
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
];
