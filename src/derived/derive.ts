import type { Entry } from '../entry/entry.ts';
import type { LogSummary } from '../logs/log-summary.ts';
import { policyOf } from '../standards/derating/index.ts';
import type { SiteDerating } from '../standards/derating/policy.ts';
import { shareMatrix } from '../sharing/share-matrix-of.ts';
import { bulkFigures } from './bulk-figures.ts';
import type { Derived } from './derived.ts';
import { efficiencyFiguresOf } from './efficiency/efficiency-figures-of.ts';
import { familyId } from './family-id.ts';
import { inputFigures } from './input-figures.ts';
import { heatFigures } from './heat/heat-figures-of.ts';
import { sustainedRuns } from './heat/sustained-runs.ts';
import { insulationRows } from './insulation/insulation-rows.ts';
import { lossBudget } from './loss-budget.ts';
import { mainsFigures } from './mains/mains-figures-of.ts';
import { namedValues } from './named-values.ts';
import { gainCurves, operatingFigures } from './operating-figures.ts';
import { powerBankFigures } from './power-bank/power-bank-figures-of.ts';
import { powerPath } from './power-path/power-path-of.ts';
import { ratedPower } from './rated-power.ts';
import { revisionLetter } from './revision-letter.ts';
import { sizeFigures } from './size-figures.ts';
import { stageVerdicts } from './stage-verdicts.ts';
import { stageGivens } from './stress/stage-givens.ts';
import { stressRows } from './stress-rows.ts';
import { topologyWords } from './topology-words.ts';
import { windingFigures } from './windings/winding-figures-of.ts';

/**
 * Everything that follows from one entry, its logs and the derating policy of its site. Pure and total: what cannot be computed is a
 * missing value with its reason.
 */
export function derive(entry: Entry, logs: readonly LogSummary[] = [], site?: SiteDerating): Derived {
  const shares = shareMatrix(entry);
  const power = ratedPower(entry, shares);
  const size = sizeFigures(entry, power);
  const input = inputFigures(entry, power);
  const bulk = bulkFigures(entry, input);
  const figures = { power, input, bulk, shares };
  const givens = stageGivens(entry, figures);
  const policy = policyOf(entry.derating, site);
  const stress = stressRows(entry, input, givens, policy);
  const windings = windingFigures(entry, givens);
  const operating = operatingFigures(entry, bulk, givens, windings);
  const path = powerPath(entry, figures);
  return {
    ratedPower: power,
    size,
    input,
    bulk,
    shares,
    path,
    insulation: insulationRows(entry, input, bulk),
    mains: mainsFigures(entry, input),
    heat: heatFigures(entry, path),
    bank: powerBankFigures(entry, logs),
    sustained: sustainedRuns(entry, logs, power),
    stress,
    derating: { id: policy.id, title: policy.title, meaning: policy.meaning, isOwn: policy.isOwn === true },
    operating,
    windings,
    gainCurves: gainCurves(entry, givens),
    logs,
    efficiency: efficiencyFiguresOf(entry, power),
    losses: lossBudget(entry, figures),
    stageVerdicts: stageVerdicts(entry, stress),
    topology: topologyWords(entry),
    family: familyId(entry),
    revision: revisionLetter(entry.corrections),
    named: namedValues(entry, { ratedPower: power, size, input, bulk, logs }),
  };
}
