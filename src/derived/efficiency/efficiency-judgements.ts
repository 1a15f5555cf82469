import type { Entry, Port } from '../../entry/entry.ts';
import { limitAt, MOST_WATTS, outputClass, type EfficiencyLine, type EfficiencyRule } from '../../standards/efficiency/efficiency-rule.ts';
import { EFFICIENCY_RULES } from '../../standards/efficiency/index.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { afterCable } from './after-cable.ts';
import type { EfficiencyJudgement, EfficiencyRun, EfficiencySpan } from './efficiency-figures.ts';
import { nearestTo } from './efficiency-runs.ts';
import { settingsOf } from './port-settings.ts';
import { testRun } from './test-run.ts';

/** How far a measured line voltage may lie from that of the test, as a share of it. */
const NEAR_LINE = 0.05;

/** Every run against every rule that looks at such a run: the mean, and a tenth of the load where the rule has a limit for it. */
export function efficiencyJudgements(entry: Entry, runs: readonly EfficiencyRun[], rated: Known<'power'>): readonly EfficiencyJudgement[] {
  return EFFICIENCY_RULES.flatMap((rule) => runs.flatMap((run) => judgementsOf(entry, rule, run, rated)));
}

function judgementsOf(entry: Entry, rule: EfficiencyRule, run: EfficiencyRun, rated: Known<'power'>): readonly EfficiencyJudgement[] {
  const { line, setting } = run;
  if (line === null || setting === null || !rule.lines.some((volts) => Math.abs(line - volts) <= NEAR_LINE * volts)) return [];
  const port = entry.ports.find((candidate) => candidate.id === run.port);
  if (port === undefined || !isLookedAt(rule, port, setting)) return [];
  const tested = testRun(rule, port, run);
  if (tested === null) return [];
  const outputs = entry.ports.filter((candidate) => candidate.direction !== 'input');
  const kind = outputs.length > 1 ? 'multiple voltage' : outputClass(setting, tested.fullAmps);
  const watts = kind === 'multiple voltage' ? (isMissing(rated) ? null : rated.nominal) : setting * tested.fullAmps;
  if (watts === null || watts > MOST_WATTS) return [];
  const about = { rule: rule.id, outputClass: kind, watts, port: run.port, setting, line };
  const corrected = afterCable(rule, tested.run);
  // The test loads every output at once; one port alone says little of it.
  const alone = kind === 'multiple voltage' ? `measured with ${port.id} alone; the test loads all outputs at once` : null;
  const remarks = [alone, tested.remark, corrected.remark].filter((each) => each !== null).join('; ');
  const judged = (
    of: EfficiencyJudgement['of'],
    measured: Known<'ratio'>,
    span: EfficiencySpan | null,
    limits: EfficiencyLine | null,
  ): readonly EfficiencyJudgement[] => {
    const limit = limits === null ? null : limitAt(limits, watts);
    if (limits === null || limit === null) return [];
    const verdict =
      alone !== null || span === null ? 'undecided' : span.low >= limit ? 'meets' : span.high < limit ? 'misses' : 'undecided';
    const margin = span === null ? null : { low: (span.low - limit) * 100, high: (span.high - limit) * 100 };
    return [{ ...about, of, measured, limit, standing: limits.standing, margin, verdict, remark: remarks === '' ? null : remarks }];
  };
  const tenth = nearestTo(corrected.run.points, 0.1);
  const { atTenth } = rule;
  return [
    ...judged('average', corrected.run.mean, corrected.run.meanSpan, rule.average[kind]),
    ...(atTenth === null || tenth === null || watts <= atTenth.aboveWatts
      ? []
      : judged('a tenth of the load', tenth.efficiency, tenth.span, atTenth.lines[kind])),
  ];
}

/** An adaptive supply is tested at the highest and the lowest of its voltages, where the rule says so. */
function isLookedAt(rule: EfficiencyRule, port: Port, setting: number): boolean {
  const settings = settingsOf(port);
  if (rule.settings === 'each' || settings === null) return true;
  return [settings.lowest, settings.highest].some((volts) => Math.abs(setting - volts) <= 0.02 * volts);
}
