import type { Formula } from '../../values/formula.ts';
import { batteryEnergy } from './battery-energy.ts';
import { electricPower } from './electric-power.ts';
import { energyRatio } from './energy-ratio.ts';
import { loadCurrent } from './load-current.ts';
import { packEnergy } from './pack-energy.ts';
import { packVoltage } from './pack-voltage.ts';
import { powerDensity } from './power-density.ts';
import { powerLoss } from './power-loss.ts';
import { sharedConverterCurrent } from './shared-converter-current.ts';
import { specificPower } from './specific-power.ts';
import { sumOfCurrents } from './sum-of-currents.ts';
import { sumOfPowers } from './sum-of-powers.ts';
import { yearlyEnergy } from './yearly-energy.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const ENERGY_FORMULAS: readonly Formula[] = [
  batteryEnergy,
  electricPower,
  energyRatio,
  loadCurrent,
  packEnergy,
  packVoltage,
  powerDensity,
  powerLoss,
  sharedConverterCurrent,
  specificPower,
  sumOfCurrents,
  sumOfPowers,
  yearlyEnergy,
];
