import type { EfficiencyPoint } from '../../entry/entry.ts';
import { meanEfficiency } from '../../formulas/loss/mean-efficiency.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { meanOfSustainedLoads } from '../../formulas/loss/mean-of-sustained-loads.ts';
import { sumOfEfficiencies } from '../../formulas/loss/sum-of-efficiencies.ts';
import { foldFormula } from '../../values/fold-formula.ts';
import { exact } from '../../values/exact.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { factValue } from '../fact-value.ts';
import type { EfficiencySpan, RunPoint } from './efficiency-figures.ts';

/** Loads of the mean, as shares of the full one. */
export const MEAN_LOADS = [0.25, 0.5, 0.75, 1] as const;

/** How far a measured load may lie from the one that is asked for, as a share of full load. The rules allow 0.02; a reviewer's steps are coarser. */
const NEAR = 0.03;
/** Efficiency is steep at a small load: up to a tenth of full load the room is a fifth of the load itself, 2 points at a tenth. */
const NEAR_SHARE = 0.2;

/** Room around a load, as a share of full load. */
export function roomAround(share: number): number {
  return Math.min(NEAR, NEAR_SHARE * share);
}

/** Mean of a run with what is certain of it: as stated by the author, else over the measured points. */
export function runMean(
  points: readonly EfficiencyPoint[],
  computed: readonly RunPoint[],
): { readonly mean: Known<'ratio'>; readonly span: EfficiencySpan | null } {
  const stated = points.find((point) => point.statistic === 'average' && point.efficiency !== null);
  if (stated?.efficiency !== undefined && stated.efficiency !== null) {
    const mean = factValue(stated.efficiency);
    return { mean, span: spanOf(mean, stated) };
  }
  const reason = absentLoads(computed);
  if (reason !== null) return { mean: missing(reason.words, reason.needs), span: null };
  const [quarter, half, threeQuarters, full] = MEAN_LOADS.map((share) => nearestTo(computed, share));
  const at = (point: RunPoint | null | undefined): Known<'ratio'> => point?.efficiency ?? missing('not measured');
  const mean = applyFormula(meanEfficiency, { quarter: at(quarter), half: at(half), threeQuarters: at(threeQuarters), full: at(full) });
  return { mean, span: spanOfMean([quarter, half, threeQuarters, full]) };
}

/** Which loads of the mean have no point, in one sentence; null where all have one. */
function absentLoads(points: readonly RunPoint[]): { readonly words: string; readonly needs: readonly string[] } | null {
  const unsustained = unsustainedLoads(points);
  const absent = MEAN_LOADS.filter((share) => nearestTo(points, share) === null && !unsustained.includes(share));
  if (absent.length + unsustained.length === 0) return null;
  const said = [
    ...(absent.length === 0 ? [] : [`no point near ${loadWords(absent)}`]),
    ...(unsustained.length === 0 ? [] : [`${loadWords(unsustained)} not sustained`]),
  ];
  return { words: said.join('; '), needs: absent.map((share) => `efficiency at ${String(share * 100)} %`) };
}

/** "25, 50 and 100 % of the load". */
export function loadWords(shares: readonly number[]): string {
  const each = shares.map((share) => String(share * 100));
  const last = each.at(-1) ?? '';
  return `${each.length < 2 ? last : `${each.slice(0, -1).join(', ')} and ${last}`} % of the load`;
}

/** Loads of the mean that were set and not held, as shares. */
export function unsustainedLoads(points: readonly RunPoint[], shares: readonly number[] = MEAN_LOADS): readonly number[] {
  return shares.filter((share) => isUnsustainedAt(points, share));
}

/** Whether a load near this one was set and not held, and none near it was. */
export function isUnsustainedAt(points: readonly RunPoint[], share: number): boolean {
  const isNear = (point: RunPoint): boolean => point.share !== null && Math.abs(point.share - share) <= roomAround(share) + 1e-9;
  return nearestTo(points, share) === null && points.some((point) => point.source.notSustained !== null && isNear(point));
}

/** Mean over the loads that were held, with what is certain of it; every load that is left out must have been tried. */
export function meanOfHeld(points: readonly RunPoint[]): { readonly mean: Known<'ratio'>; readonly span: EfficiencySpan | null } {
  const asked = MEAN_LOADS.filter((share) => !isUnsustainedAt(points, share));
  const held = asked.map((share) => nearestTo(points, share));
  const absent = asked.find((_, index) => held[index] === null);
  if (absent !== undefined) return { mean: missing(`no point near ${loadWords([absent])}`), span: null };
  const known = held.flatMap((point) => point?.efficiency ?? []);
  const sum = foldFormula<'ratio'>(known, (first, second) => applyFormula(sumOfEfficiencies, { first, second }), 'load that was held');
  const mean = applyFormula(meanOfSustainedLoads, { sum, count: exact('ratio', known.length) });
  return { mean, span: spanOfMean(held, held.length) };
}

function spanOfMean(points: readonly (RunPoint | null | undefined)[], count: number = MEAN_LOADS.length): EfficiencySpan | null {
  const spans = points.flatMap((point) => point?.span ?? []);
  if (spans.length < count || count === 0) return null;
  const mean = (of: (span: EfficiencySpan) => number): number => spans.reduce((sum, span) => sum + of(span), 0) / spans.length;
  return { low: mean(({ low }) => low), high: mean(({ high }) => high) };
}

/** What is certain of a figure: its interval, or one end where the author gives a bound. */
export function spanOf(known: Known<'ratio'>, { efficiency }: Pick<EfficiencyPoint, 'efficiency'>): EfficiencySpan | null {
  if (!isMissing(known)) return { low: known.low, high: known.high };
  if (efficiency === null) return null;
  const { low, high } = efficiency.quantity;
  return { low: low ?? 0, high: high ?? 1 };
}

/** The measured point nearest to a share of full load, where one is near. */
export function nearestTo(points: readonly RunPoint[], share: number): RunPoint | null {
  const near = points
    .flatMap((point) => (point.share === null || point.span === null ? [] : [{ point, away: Math.abs(point.share - share) }]))
    .filter(({ away }) => away <= roomAround(share) + 1e-9)
    .sort((one, other) => one.away - other.away);
  return near[0]?.point ?? null;
}
