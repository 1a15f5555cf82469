import type { Entry } from '../../entry/entry.ts';
import { MOST_WATTS } from '../../standards/efficiency/efficiency-rule.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { EfficiencyFigures } from './efficiency-figures.ts';
import { efficiencyJudgements } from './efficiency-judgements.ts';
import { efficiencyRuns } from './efficiency-runs.ts';
import { noLoadFigures } from './no-load.ts';
import { noLoadJudgements } from './no-load-judgements.ts';

/** Efficiency of the whole device with the limits that look at it; what belongs to one stage is left out. */
export function efficiencyFiguresOf(entry: Entry, rated: Known<'power'>): EfficiencyFigures {
  const runs = efficiencyRuns(entry, rated);
  const noLoad = noLoadFigures(entry);
  const outOfScope = scopeReason(entry, rated);
  const judgements = outOfScope === null ? [...efficiencyJudgements(entry, runs, rated), ...noLoadJudgements(entry, noLoad, rated)] : [];
  return { runs, noLoad, judgements, outOfScope };
}

/** The rules look at external supplies from the mains. */
function scopeReason({ device, nameplate }: Entry, rated: Known<'power'>): string | null {
  if (!isMissing(rated) && rated.nominal > MOST_WATTS) return `the limits end at ${String(MOST_WATTS)} W`;
  if (device.kind === 'power bank') return 'a power bank is no external power supply';
  if (nameplate.input?.kind === 'DC') return 'the rules look at supplies from the mains, not at a DC input';
  return nameplate.input === null ? 'the rated input is not known' : null;
}
