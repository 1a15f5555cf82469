import type { Entry } from '../../entry/entry.ts';
import { MOST_WATTS, type EfficiencyRule, type OutputClass } from '../../standards/efficiency/efficiency-rule.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { EfficiencyRun } from './efficiency-figures.ts';
import { isAtHighest, isAtLowest, lowestNameplatePower, type NameplatePower } from './nameplate-power.ts';
import { settingsOf } from './port-settings.ts';
import { outputsOf, supplyClass } from './supply-class.ts';
import { testRun, type TestRun } from './test-run.ts';

/** How far a measured line voltage may lie from that of the test, as a share of it. */
const NEAR_LINE = 0.05;

/** A run as one rule sees it. */
export interface LookedAt {
  readonly rule: EfficiencyRule;
  readonly run: EfficiencyRun;
  readonly tested: TestRun;
  readonly outputClass: OutputClass;
  /** Nameplate power on the loads of the mean, and on a tenth of the load, W. */
  readonly watts: NameplatePower;
  readonly wattsOfTenth: NameplatePower;
  /** Why the run decides nothing; null where it may. */
  readonly undecided: string | null;
}

/** A run as a rule sees it; null where the rule does not look at such a run, or too little is known of it. */
export function lookedAt(entry: Entry, rule: EfficiencyRule, run: EfficiencyRun, rated: Known<'power'>): LookedAt | null {
  const { line, ports } = run;
  if (run.isReported || line === null || ports.length === 0 || isMissing(rated)) return null;
  if (!rule.lines.some((volts) => Math.abs(line - volts) <= NEAR_LINE * volts) || !isSetting(rule, run)) return null;
  const outputs = outputsOf(entry.ports);
  const tested = testRun(rule, run, rated);
  if (tested === null && ports.length === 1) return null;
  const own = ownWatts(tested?.ports ?? ports);
  const ownOfTenth = ownWatts(ports);
  if (outputs.length === 1 && own === null) return null;
  const isOne = outputs.length === 1;
  const atLowest = isAtLowest(ports);
  const exact = (watts: number): NameplatePower => ({ low: watts, high: watts });
  const watts = isOne
    ? exact(own ?? rated.nominal)
    : ((atLowest ? lowestNameplatePower(rule, outputs, rated.nominal) : null) ?? exact(rated.nominal));
  const all = ports.length === outputs.length ? ownOfTenth : null;
  const wattsOfTenth = exact(isOne ? (ownOfTenth ?? rated.nominal) : Math.min(rated.nominal, all ?? rated.nominal));
  if (Math.max(watts.high, wattsOfTenth.high) > MOST_WATTS) return null;
  const absent = outputs.filter(({ id }) => !ports.some((port) => port.id === id)).map(({ id }) => id);
  return {
    rule,
    run,
    tested: tested ?? { run, ports, remark: null },
    outputClass: supplyClass(outputs, ports[0]?.setting ?? 0, isOne ? watts.high : rated.nominal),
    watts,
    wattsOfTenth,
    undecided: absent.length > 0 ? absentWords(run, absent) : tested === null ? unratedWords(run) : null,
  };
}

/** An adaptive supply is tested at the highest and the lowest of its voltages, where the rule says so. */
function isSetting(rule: EfficiencyRule, { ports, settings }: EfficiencyRun): boolean {
  if (settings === null) return false;
  return (
    rule.settings === 'each' ||
    isAtHighest(ports) ||
    isAtLowest(ports) ||
    ports.some(({ port }) => port === null || settingsOf(port) === null)
  );
}

/** Sum of what the ports are rated for at their settings; null where one is not known. */
function ownWatts(ports: EfficiencyRun['ports']): number | null {
  const each = ports.map(({ setting, fullAmps }) => (setting === null || fullAmps === null ? null : setting * fullAmps));
  return each.every((watts) => watts !== null) ? each.reduce((sum, watts) => sum + watts, 0) : null;
}

function absentWords({ ports, port }: EfficiencyRun, absent: readonly string[]): string {
  return ports.length === 1
    ? `measured with ${String(port)} alone; the test loads all outputs at once`
    : `measured without ${absent.join(' and ')}; the test loads all outputs at once`;
}

function unratedWords({ ports }: EfficiencyRun): string {
  const unrated = ports.filter(({ fullAmps }) => fullAmps === null).map(({ id, setting }) => `${id} at ${String(setting)} V`);
  return unrated.length === 0
    ? 'the rated power of all ports together is not known'
    : `what ${unrated.join(' and ')} is rated for is not known`;
}
