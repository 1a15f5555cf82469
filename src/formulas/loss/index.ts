import type { Formula } from '../../values/formula.ts';
import { conductionLoss } from './conduction-loss.ts';
import { deadTimeLoss } from './dead-time-loss.ts';
import { dutyConductionLoss } from './duty-conduction-loss.ts';
import { energyPerCycleLoss } from './energy-per-cycle-loss.ts';
import { forwardDropLoss } from './forward-drop-loss.ts';
import { gateDriveLoss } from './gate-drive-loss.ts';
import { hotResistance } from './hot-resistance.ts';
import { loadDerating } from './load-derating.ts';
import { meanEfficiency } from './mean-efficiency.ts';
import { meanOfSustainedLoads } from './mean-of-sustained-loads.ts';
import { outputCapacitanceLoss } from './output-capacitance-loss.ts';
import { overlapLoss } from './overlap-loss.ts';
import { parallelPartLoss } from './parallel-part-loss.ts';
import { parallelPartsResistance } from './parallel-parts-resistance.ts';
import { powerEfficiency } from './power-efficiency.ts';
import { recoveryLoss } from './recovery-loss.ts';
import { resistiveLoss } from './resistive-loss.ts';
import { seriesResistanceFromDissipation } from './series-resistance-from-dissipation.ts';
import { sumOfEfficiencies } from './sum-of-efficiencies.ts';
import { turnTakingResistance } from './turn-taking-resistance.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const LOSS_FORMULAS: readonly Formula[] = [
  conductionLoss,
  deadTimeLoss,
  dutyConductionLoss,
  energyPerCycleLoss,
  forwardDropLoss,
  gateDriveLoss,
  hotResistance,
  loadDerating,
  meanEfficiency,
  meanOfSustainedLoads,
  outputCapacitanceLoss,
  overlapLoss,
  parallelPartLoss,
  parallelPartsResistance,
  powerEfficiency,
  recoveryLoss,
  resistiveLoss,
  seriesResistanceFromDissipation,
  sumOfEfficiencies,
  turnTakingResistance,
];
