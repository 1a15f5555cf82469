import type { Claim, Entry, Fact } from '../entry/entry.ts';
import { valueOf } from '../values/from-quantity.ts';
import { isMissing, type Known, type Value } from '../values/value.ts';
import { readQuantity } from '../units/read-quantity.ts';
import type { Dimension } from '../units/dimension.ts';
import type { EfficiencyFigures, EfficiencyRun } from './efficiency/efficiency-figures.ts';
import { nearestTo } from './efficiency/run-mean.ts';
import { lineVolts } from './line-volts.ts';
import type { ReportedAndMeasured } from './reported-and-measured.ts';

/** Two samples of one model and two places at one connector differ by this much, as a fraction; common practice. */
const SLACK_POINTS = 0.01;
/** Voltages within this share of each other are one setting. */
const SAME_VOLTS = 0.05;
/** A run with fewer loads may have missed the highest efficiency. */
const ENOUGH_LOADS = 4;

/** A figure of efficiency that somebody states of the device: a display, a print on the case, the box. */
interface Stated {
  readonly statistic: 'point' | 'average' | 'peak';
  readonly value: Value;
  readonly port: string | null;
  readonly line: number | null;
  readonly settings: string | null;
  readonly share: number | null;
  readonly by: string;
  readonly path: Fact['path'];
}

/** Every efficiency that a system, a print or the maker states beside the measured one under conditions that do not differ. */
export function reportedEfficiencies(
  entry: Pick<Entry, 'claims' | 'efficiency'>,
  { runs }: EfficiencyFigures,
): readonly ReportedAndMeasured[] {
  const measured = runs.filter(({ isReported }) => !isReported);
  if (measured.length === 0) return [];
  const stated = [...runs.filter(({ isReported }) => isReported).flatMap((run) => ofRun(run, entry)), ...entry.claims.flatMap(ofClaim)];
  return stated.flatMap((one) => paired(one, measured));
}

function ofRun({ points, mean, line, port, settings }: EfficiencyRun, entry: Pick<Entry, 'efficiency'>): readonly Stated[] {
  const about = { line, port, settings };
  const each = points.flatMap(({ source, share, efficiency }): Stated[] =>
    isMissing(efficiency) || share === null
      ? []
      : [{ ...about, statistic: 'point', value: efficiency, share, by: byWords(source), path: source.path }],
  );
  const [first] = points;
  // A mean over reported points says nothing that its points do not; one that is stated alone does.
  if (first !== undefined || isMissing(mean)) return each;
  const { origin } = mean;
  const source = entry.efficiency.find(({ efficiency }) => 'at' in origin && efficiency?.path.join('.') === origin.at);
  if (source?.efficiency == null) return each;
  return [{ ...about, statistic: 'average', value: mean, share: null, by: byWords(source), path: source.efficiency.path }];
}

function byWords({ method, efficiency, input }: EfficiencyRun['points'][number]['source']): string {
  return method ?? (efficiency ?? input)?.evidence ?? 'as stated';
}

function ofClaim({ of, quantity, line, output, port, load, where, path }: Claim): readonly Stated[] {
  const found = /^(?:(peak|highest|max(?:imum)?|up to|average|mean)\s+)?efficiency$/iu.exec(of.trim());
  if (found === null || quantity?.dimension !== 'ratio') return [];
  const written = valueOf({ quantity, evidence: 'printed' }, path.join('.'), { bound: 'use' });
  if (isMissing(written)) return [];
  // What is printed is rounded: "93 %" may be 92.5 %.
  const value = { ...written, low: written.low - quantity.resolution / 2, high: written.high + quantity.resolution / 2 };
  const word = found[1]?.toLowerCase();
  const share = word === undefined ? shareOf(load) : null;
  const statistic = word === 'average' || word === 'mean' ? 'average' : share === null ? 'peak' : 'point';
  return [
    {
      statistic,
      value,
      port,
      line: lineVolts(line ?? undefined),
      settings: output,
      share,
      by: where ?? 'as the maker states',
      path: [...path, 'value'],
    },
  ];
}

/** "100 %", "full load"; null for a load that is not said or is no share. */
function shareOf(load: string | null): number | null {
  if (load === null) return null;
  if (/^full(?: load)?$/iu.test(load.trim())) return 1;
  return quantityIn(load, 'ratio');
}

/** The measured figure that is nearest; where any agrees, nothing is wrong. */
function paired(stated: Stated, measured: readonly EfficiencyRun[]): readonly ReportedAndMeasured[] {
  const { value, port, line, settings, statistic, share, by, path } = stated;
  const fitting = measured.filter(
    (run) => isAlike(port, run.port) && isNear(line, run.line) && isNear(volts(settings), volts(run.settings)),
  );
  const beside = fitting.flatMap((run) => known(figureOf(run, statistic, share)));
  const distance = (other: Value): number => Math.abs(other.nominal - value.nominal);
  const [nearest] = beside.toSorted((one, other) => distance(one) - distance(other));
  if (nearest === undefined) return [];
  const subject = statistic === 'point' ? 'efficiency' : statistic === 'average' ? 'average efficiency' : 'peak efficiency';
  return [{ subject, where: port, reported: value, measured: nearest, by, log: null, agrees: agrees(stated, nearest), path }];
}

function figureOf({ points, mean }: EfficiencyRun, statistic: Stated['statistic'], share: number | null): Known | undefined {
  if (statistic === 'average') return mean;
  if (statistic === 'point') return share === null ? undefined : nearestTo(points, share)?.efficiency;
  const reached = points.flatMap(({ efficiency }) => known(efficiency));
  return reached.length < ENOUGH_LOADS ? undefined : reached.toSorted((one, other) => other.nominal - one.nominal)[0];
}

function known(value: Known | undefined): readonly Value[] {
  return value === undefined || isMissing(value) ? [] : [value];
}

/** A peak that lies below the best that was measured is no boast: then the statement is careful and not wrong. */
function agrees({ value, statistic }: Stated, measured: Value): boolean {
  const isNotAbove = value.low <= measured.high + SLACK_POINTS;
  return isNotAbove && (statistic === 'peak' || value.high >= measured.low - SLACK_POINTS);
}

/** A condition that only one of them states is not known to differ. */
function isAlike(one: string | null, other: string | null): boolean {
  return one === null || other === null || one.toLowerCase() === other.toLowerCase();
}

function isNear(one: number | null, other: number | null): boolean {
  return one === null || other === null || Math.abs(one - other) <= SAME_VOLTS * other;
}

/** Volts of a single setting; null for several, which have no one voltage. */
function volts(settings: string | null): number | null {
  return settings === null ? null : quantityIn(settings, 'voltage');
}

function quantityIn(text: string, dimension: Dimension): number | null {
  const reading = readQuantity(text, dimension);
  return reading.ok ? reading.value.nominal : null;
}
