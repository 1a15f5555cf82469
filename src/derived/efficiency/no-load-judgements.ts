import type { Entry, Port } from '../../entry/entry.ts';
import {
  MOST_WATTS,
  noLoadLimitAt,
  type EfficiencyRule,
  type NoLoadLine,
  type OutputClass,
} from '../../standards/efficiency/efficiency-rule.ts';
import { EFFICIENCY_RULES } from '../../standards/efficiency/index.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { EfficiencyJudgement, NoLoadFigure } from './efficiency-figures.ts';
import { lowestNameplatePower } from './nameplate-power.ts';
import { settingsOf } from './port-settings.ts';
import { outputsOf, supplyClass } from './supply-class.ts';

const NEAR_LINE = 0.05;

/** What a rule holds the power without load against. */
interface NoLoadCase {
  readonly kind: OutputClass;
  readonly watts: number;
  readonly limit: number;
  readonly line: NoLoadLine;
}

/** The power without load, at each line that was measured, against every rule. */
export function noLoadJudgements(entry: Entry, figures: readonly NoLoadFigure[], rated: Known<'power'>): readonly EfficiencyJudgement[] {
  return EFFICIENCY_RULES.flatMap((rule) => {
    const held = isMissing(rated) ? null : caseOf(entry, rule, rated.nominal);
    if (held === null) return [];
    return figures.flatMap(({ line, isReported, power, span }): readonly EfficiencyJudgement[] => {
      if (isReported || line === null || !rule.lines.some((volts) => Math.abs(line - volts) <= NEAR_LINE * volts)) return [];
      const { kind, watts, limit } = held;
      const verdict = span === null ? 'undecided' : span.high <= limit ? 'meets' : span.low > limit ? 'misses' : 'undecided';
      const margin = span === null ? null : { low: limit - span.high, high: limit - span.low };
      const about = {
        rule: rule.id,
        of: 'no load',
        outputClass: kind,
        watts,
        port: null,
        setting: null,
        settings: null,
        line,
        source: null,
      } as const;
      return [{ ...about, measured: power, limit, standing: held.line.standing, margin, verdict, remark: null }];
    });
  });
}

function caseOf(entry: Entry, rule: EfficiencyRule, rated: number): NoLoadCase | null {
  const outputs = outputsOf(entry.ports);
  const [first] = outputs;
  if (first === undefined || rated > MOST_WATTS) return null;
  // An adaptive supply is tested without load at its lowest voltage, where its nameplate power counts as 2 A a port.
  const lowest = rule.lowestVoltageAmps === null ? null : lowestNameplatePower(rule, outputs, rated);
  const watts = lowest?.high ?? rated;
  const settings = settingsOf(first);
  // Where the lowest voltage is not what is tested, the highest one says which class it is.
  const volts = (lowest === null ? settings?.highest : settings?.lowest) ?? null;
  const kind = volts === null && outputs.length === 1 ? 'basic voltage' : supplyClass(outputs, volts ?? 0, watts);
  const line = rule.noLoad[kind];
  if (line === null) return null;
  const each = kind === 'multiple voltage' ? rule.noLoadForEachPort : null;
  const more = each === null ? 0 : each.more * (countedOutputs(outputs) - 1);
  const limit = Math.min(noLoadLimitAt(line, watts) + more, each?.most ?? Number.POSITIVE_INFINITY);
  return { kind, watts, limit, line };
}

/** Adaptive ports, and each voltage of the others once: what the rule counts as outputs. */
function countedOutputs(outputs: readonly Port[]): number {
  const [adaptive, fixed] = [outputs.filter(isAdaptivePort), outputs.filter((port) => !isAdaptivePort(port))];
  return adaptive.length + new Set(fixed.map((port) => settingsOf(port)?.highest)).size;
}

function isAdaptivePort(port: Port): boolean {
  const settings = settingsOf(port);
  return settings !== null && settings.lowest < settings.highest;
}
