import type { Formula } from '../../values/formula.ts';
import { boostDuty } from './boost-duty.ts';
import { boostInductorMean } from './boost-inductor-mean.ts';
import { boostInductorRipple } from './boost-inductor-ripple.ts';
import { boostOutputCapacitorRms } from './boost-output-capacitor-rms.ts';
import { boostSwitchRms } from './boost-switch-rms.ts';
import { buckDuty } from './buck-duty.ts';
import { buckHighSideRms } from './buck-high-side-rms.ts';
import { buckInductance } from './buck-inductance.ts';
import { buckInductorRipple } from './buck-inductor-ripple.ts';
import { buckInputCapacitance } from './buck-input-capacitance.ts';
import { buckInputCapacitorRms } from './buck-input-capacitor-rms.ts';
import { buckLowSideRms } from './buck-low-side-rms.ts';
import { buckOutputRipple } from './buck-output-ripple.ts';
import { inductorPeakCurrent } from './inductor-peak-current.ts';
import { rippleCarryingRms } from './ripple-carrying-rms.ts';
import { rippleShare } from './ripple-share.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const BUCK_FORMULAS: readonly Formula[] = [
  boostDuty,
  boostInductorMean,
  boostInductorRipple,
  boostOutputCapacitorRms,
  boostSwitchRms,
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
];
