import type { Formula } from '../../values/formula.ts';
import { boxSurfaceTemperature } from './box-surface-temperature.ts';
import { convectedPower } from './convected-power.ts';
import { heatFlux } from './heat-flux.ts';
import { junctionTemperature } from './junction-temperature.ts';
import { radiatedPower } from './radiated-power.ts';
import { temperatureRise } from './temperature-rise.ts';
import { temperatureWithLoss } from './temperature-with-loss.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const THERMAL_FORMULAS: readonly Formula[] = [
  boxSurfaceTemperature,
  convectedPower,
  heatFlux,
  junctionTemperature,
  radiatedPower,
  temperatureRise,
  temperatureWithLoss,
];
