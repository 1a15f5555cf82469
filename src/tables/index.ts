import { cableEnds } from './cable-ends.ts';
import { computed } from './computed.ts';
import { efficiencyLimits } from './efficiency-limits.ts';
import { efficiencyMeans } from './efficiency-means.ts';
import { efficiency } from './efficiency.ts';
import { gainCurveTable } from './gain-curve.ts';
import { noLoad } from './no-load.ts';
import { heat } from './heat.ts';
import { powerBank } from './power-bank.ts';
import { sustainedPower } from './sustained-power.ts';
import { heatLoss } from './heat-loss.ts';
import { input } from './input.ts';
import { insulation } from './insulation.ts';
import { mainsSide } from './mains-side.ts';
import { logSteps } from './log-steps.ts';
import { logs } from './logs.ts';
import { offers } from './offers.ts';
import { partsByRole } from './parts-by-role.ts';
import { parts } from './parts.ts';
import { portAdditions } from './port-additions.ts';
import { portAnswers } from './port-answers.ts';
import { portFalls } from './port-falls.ts';
import { portShare } from './port-share.ts';
import { portSteps } from './port-steps.ts';
import { sharedLoad } from './shared-load.ts';
import { powerPathTable } from './power-path.ts';
import { regulation } from './regulation.ts';
import { size } from './size.ts';
import { storedEnergy } from './stored-energy.ts';
import { stress } from './stress.ts';
import { voltageQuality } from './voltage-quality.ts';
import type { TableDeclaration } from './table-declaration.ts';

/** Every derived table, in the order in which a page shows those that the author has not placed. */
export const TABLES: readonly TableDeclaration[] = [
  portShare,
  portFalls,
  portAnswers,
  portAdditions,
  portSteps,
  sharedLoad,
  offers,
  powerPathTable,
  size,
  input,
  storedEnergy,
  stress,
  gainCurveTable,
  mainsSide,
  insulation,
  heat,
  heatLoss,
  sustainedPower,
  powerBank,
  efficiencyMeans,
  efficiencyLimits,
  noLoad,
  efficiency,
  voltageQuality,
  regulation,
  cableEnds,
  logs,
  logSteps,
  parts,
  partsByRole,
  computed,
];
