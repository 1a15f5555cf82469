import type { Entry } from '../../entry/entry.ts';
import { limitAt, type EfficiencyLine } from '../../standards/efficiency/efficiency-rule.ts';
import { EFFICIENCY_RULES } from '../../standards/efficiency/index.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { afterCable } from './after-cable.ts';
import type { EfficiencyJudgement, EfficiencyRun, EfficiencySpan, LimitVerdict } from './efficiency-figures.ts';
import { unevenSpread } from './load-spread.ts';
import { lookedAt, type LookedAt } from './looked-at.ts';
import type { NameplatePower } from './nameplate-power.ts';
import { isUnsustainedAt, loadWords, MEAN_LOADS, meanOfHeld, nearestTo, unsustainedLoads } from './run-mean.ts';

/** Every run against every rule that looks at such a run: the mean, and a tenth of the load where the rule has a limit for it. */
export function efficiencyJudgements(entry: Entry, runs: readonly EfficiencyRun[], rated: Known<'power'>): readonly EfficiencyJudgement[] {
  return EFFICIENCY_RULES.flatMap((rule) =>
    runs.flatMap((run) => {
      const looked = lookedAt(entry, rule, run, rated);
      return looked === null ? [] : [...averageOf(looked), ...tenthOf(looked)];
    }),
  );
}

function averageOf(looked: LookedAt): readonly EfficiencyJudgement[] {
  const { rule, tested } = looked;
  const { run: corrected, remark } = afterCable(rule, tested.run);
  // A mean that the author states stands, whatever was held.
  const unsustained = isMissing(corrected.mean) ? unsustainedLoads(corrected.points) : [];
  const held = unsustained.length > 0 && rule.leavesOutUnsustained ? meanOfHeld(corrected.points) : null;
  const isOpen = unsustained.length > 0 && held === null;
  return judged(looked, {
    of: 'average',
    watts: looked.watts,
    measured: held?.mean ?? corrected.mean,
    span: held === null ? corrected.meanSpan : held.span,
    limits: rule.average[looked.outputClass],
    withheld: isOpen ? `${loadWords(unsustained)} not sustained` : unevenSpread(tested.run, MEAN_LOADS),
    remarks: [held === null ? null : `${loadWords(unsustained)} not sustained, and left out of the mean`, tested.remark, remark],
  });
}

/** A tenth of the load is one of the nameplate, at the lowest voltage too: the 2 A of the other loads do not hold for it. */
function tenthOf(looked: LookedAt): readonly EfficiencyJudgement[] {
  const { rule, run, wattsOfTenth } = looked;
  const { atTenth } = rule;
  if (atTenth === null || wattsOfTenth.high <= atTenth.aboveWatts) return [];
  const { run: corrected, remark } = afterCable(rule, run);
  const point = nearestTo(corrected.points, 0.1);
  const isUnsustained = isUnsustainedAt(corrected.points, 0.1);
  if (point === null && !isUnsustained) return [];
  return judged(looked, {
    of: 'a tenth of the load',
    watts: wattsOfTenth,
    measured: point?.efficiency ?? missing('not sustained'),
    span: point?.span ?? null,
    limits: atTenth.lines[looked.outputClass],
    withheld: isUnsustained ? `${loadWords([0.1])} not sustained` : unevenSpread(run, [0.1]),
    remarks: [remark],
  });
}

interface Figure {
  readonly of: EfficiencyJudgement['of'];
  readonly watts: NameplatePower;
  readonly measured: Known<'ratio'>;
  readonly span: EfficiencySpan | null;
  readonly limits: EfficiencyLine | null;
  /** Why the figure decides nothing: the loads are not those of the test, or one of them was not held; null where it may. */
  readonly withheld: string | null;
  readonly remarks: readonly (string | null)[];
}

function judged({ rule, run, outputClass: kind, undecided }: LookedAt, figure: Figure): readonly EfficiencyJudgement[] {
  const { of, watts, measured, span, limits, withheld } = figure;
  const limit = limits === null ? null : limitAt(limits, watts.high);
  const lenient = limits === null ? null : limitAt(limits, watts.low);
  if (limits === null || limit === null || lenient === null) return [];
  const reason = undecided ?? withheld;
  const [strictly, leniently] = span === null ? (['undecided', 'undecided'] as const) : [verdictOf(span, limit), verdictOf(span, lenient)];
  const isOpen = reason === null && strictly !== leniently;
  const practice = run.ports.length > 1 && rule.severalPorts === 'common practice' ? 'loads of several ports by common practice' : null;
  const remarks = [reason, isOpen ? nameplateWords(watts) : null, ...figure.remarks, practice].filter((each) => each !== null).join('; ');
  return [
    {
      ...{
        rule: rule.id,
        of,
        outputClass: kind,
        watts: watts.high,
        port: run.port,
        setting: run.setting,
        settings: run.settings,
        line: run.line,
        source: run.points[0]?.source ?? null,
      },
      ...{ measured, limit, standing: limits.standing },
      margin: span === null ? null : { low: (span.low - limit) * 100, high: (span.high - limit) * 100 },
      verdict: reason === null && strictly === leniently ? strictly : 'undecided',
      remark: remarks === '' ? null : remarks,
    },
  ];
}

function verdictOf({ low, high }: EfficiencySpan, limit: number): LimitVerdict {
  if (low >= limit) return 'meets';
  return high < limit ? 'misses' : 'undecided';
}

function nameplateWords({ low, high }: NameplatePower): string {
  return `the rule leaves open whether its nameplate power is ${String(low)} W or ${String(high)} W here`;
}
