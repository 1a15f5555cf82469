import type { Entry, Port } from '../../entry/entry.ts';
import { limitAt, MOST_WATTS, outputClass, type EfficiencyLine, type EfficiencyRule } from '../../standards/efficiency/efficiency-rule.ts';
import { EFFICIENCY_RULES } from '../../standards/efficiency/index.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { afterCable } from './after-cable.ts';
import type { EfficiencyJudgement, EfficiencyRun, EfficiencySpan, LimitVerdict } from './efficiency-figures.ts';
import { nearestTo } from './run-mean.ts';
import { lowestVoltageTest } from './lowest-voltage-test.ts';
import { settingsOf } from './port-settings.ts';
import { testRun } from './test-run.ts';

/** How far a measured line voltage may lie from that of the test, as a share of it. */
const NEAR_LINE = 0.05;

/** Every run against every rule that looks at such a run: the mean, and a tenth of the load where the rule has a limit for it. */
export function efficiencyJudgements(entry: Entry, runs: readonly EfficiencyRun[], rated: Known<'power'>): readonly EfficiencyJudgement[] {
  return EFFICIENCY_RULES.flatMap((rule) =>
    runs.flatMap((run) => {
      const looked = lookedAt(entry, rule, run, rated);
      return looked === null ? [] : [...averageOf(looked), ...tenthOf(looked)];
    }),
  );
}

/** A run as one rule sees it. */
interface LookedAt {
  readonly rule: EfficiencyRule;
  readonly run: EfficiencyRun;
  readonly port: Port;
  readonly outputClass: EfficiencyJudgement['outputClass'];
  /** Nameplate power on the loads of the mean, and on a tenth of the load, W. */
  readonly watts: number;
  readonly wattsOfTenth: number;
  /** Why one port says little of several; null where there is one. */
  readonly alone: string | null;
}

function lookedAt(entry: Entry, rule: EfficiencyRule, run: EfficiencyRun, rated: Known<'power'>): LookedAt | null {
  const { line, setting, fullAmps } = run;
  const port = entry.ports.find((candidate) => candidate.id === run.port);
  if (run.isReported || line === null || setting === null || port === undefined || isMissing(rated)) return null;
  if (!rule.lines.some((volts) => Math.abs(line - volts) <= NEAR_LINE * volts) || !isSetting(rule, port, setting)) return null;
  const tested = testRun(rule, port, run);
  if (tested === null || fullAmps === null) return null;
  const outputs = entry.ports.filter((candidate) => candidate.direction !== 'input');
  const isShared = outputs.length > 1;
  const watts = isShared ? sharedWatts(rule, outputs, setting, rated.nominal) : setting * tested.fullAmps;
  const wattsOfTenth = isShared ? rated.nominal : setting * fullAmps;
  if (Math.max(watts, wattsOfTenth) > MOST_WATTS) return null;
  const kind = isShared ? 'multiple voltage' : outputClass(setting, tested.fullAmps);
  const alone = isShared ? `measured with ${port.id} alone; the test loads all outputs at once` : null;
  return { rule, run, port, outputClass: kind, watts, wattsOfTenth, alone };
}

/** Nameplate power of several outputs at one voltage: at the lowest one that of the test of each, where all are tested there. */
function sharedWatts(rule: EfficiencyRule, outputs: readonly Port[], setting: number, rated: number): number {
  const tests = outputs.map((port) => lowestVoltageTest(rule, port));
  const isLowest = tests.every((test) => test !== null && Math.abs(setting - test.volts) <= 0.02 * test.volts);
  return isLowest ? tests.reduce((sum, test) => sum + (test === null ? 0 : test.volts * test.amps), 0) : rated;
}

function averageOf(looked: LookedAt): readonly EfficiencyJudgement[] {
  const { rule, port, run } = looked;
  const tested = testRun(rule, port, run);
  if (tested === null) return [];
  const { run: corrected, remark } = afterCable(rule, tested.run);
  const limits = rule.average[looked.outputClass];
  return judged(looked, {
    of: 'average',
    watts: looked.watts,
    measured: corrected.mean,
    span: corrected.meanSpan,
    limits,
    remarks: [tested.remark, remark],
  });
}

/** A tenth of the load is one of the nameplate, at the lowest voltage too: the 2 A of the other loads do not hold for it. */
function tenthOf(looked: LookedAt): readonly EfficiencyJudgement[] {
  const { rule, run, wattsOfTenth } = looked;
  const { atTenth } = rule;
  if (atTenth === null || wattsOfTenth <= atTenth.aboveWatts) return [];
  const { run: corrected, remark } = afterCable(rule, run);
  const point = nearestTo(corrected.points, 0.1);
  if (point === null) return [];
  const limits = atTenth.lines[looked.outputClass];
  return judged(looked, {
    of: 'a tenth of the load',
    watts: wattsOfTenth,
    measured: point.efficiency,
    span: point.span,
    limits,
    remarks: [remark],
  });
}

function judged(
  { rule, run, outputClass: kind, alone }: LookedAt,
  figure: {
    readonly of: EfficiencyJudgement['of'];
    readonly watts: number;
    readonly measured: Known<'ratio'>;
    readonly span: EfficiencySpan | null;
    readonly limits: EfficiencyLine | null;
    readonly remarks: readonly (string | null)[];
  },
): readonly EfficiencyJudgement[] {
  const { of, watts, measured, span, limits } = figure;
  const limit = limits === null ? null : limitAt(limits, watts);
  if (limits === null || limit === null) return [];
  const remarks = [alone, ...figure.remarks].filter((each) => each !== null).join('; ');
  return [
    {
      ...{ rule: rule.id, of, outputClass: kind, watts, port: run.port, setting: run.setting, line: run.line },
      ...{ measured, limit, standing: limits.standing },
      margin: span === null ? null : { low: (span.low - limit) * 100, high: (span.high - limit) * 100 },
      verdict: alone === null && span !== null ? verdictOf(span, limit) : 'undecided',
      remark: remarks === '' ? null : remarks,
    },
  ];
}

function verdictOf({ low, high }: EfficiencySpan, limit: number): LimitVerdict {
  if (low >= limit) return 'meets';
  return high < limit ? 'misses' : 'undecided';
}

/** An adaptive supply is tested at the highest and the lowest of its voltages, where the rule says so. */
function isSetting(rule: EfficiencyRule, port: Port, setting: number): boolean {
  const settings = settingsOf(port);
  if (rule.settings === 'each' || settings === null) return true;
  return [settings.lowest, settings.highest].some((volts) => Math.abs(setting - volts) <= 0.02 * volts);
}
