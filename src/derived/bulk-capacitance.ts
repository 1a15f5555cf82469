import type { Part } from '../entry/entry.ts';
import { capacitanceWithTolerance } from '../formulas/capacitor/capacitance-with-tolerance.ts';
import { parallelCapacitance } from '../formulas/capacitor/parallel-capacitance.ts';
import { seriesCapacitance } from '../formulas/capacitor/series-capacitance.ts';
import { ELECTROLYTIC_TOLERANCE } from '../standards/customary-values.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { assume } from '../values/assume.ts';
import { foldFormula } from '../values/fold-formula.ts';
import { isMissing, type Known } from '../values/value.ts';
import { pieces } from './fitted-parts.ts';
import { ratingOf } from './part-rating.ts';

type Capacitance = Known<'capacitance'>;

/** Most pieces that one key is followed for; a count beyond is a slip that a check reports. */
const MOST_PIECES = 64;

/**
 * Capacitance of all bulk capacitors together. Keys stand side by side; the pieces of one key as its arrangement says, side by
 * side where it says nothing, which is the way that stores more.
 */
export function bankCapacitance(parts: readonly Part[]): Capacitance {
  return foldFormula(parts.map(capacitanceOfKey), inParallel, 'bulk capacitance');
}

function capacitanceOfKey(part: Part): Capacitance {
  const one = withTolerance(ratingOf(part, 'capacitance'));
  const all = Array.from({ length: Math.min(pieces(part), MOST_PIECES) }, () => one);
  return foldFormula(all, part.arrangement === 'series' ? inSeries : inParallel, 'bulk capacitance');
}

function inParallel(first: Capacitance, second: Capacitance): Capacitance {
  return applyFormula(parallelCapacitance, { first, second });
}

function inSeries(first: Capacitance, second: Capacitance): Capacitance {
  return applyFormula(seriesCapacitance, { first, second });
}

/** A marking without tolerance gets the customary one. */
function withTolerance(marked: Capacitance): Capacitance {
  if (isMissing(marked) || marked.low !== marked.high || marked.origin.evidence === 'measured') return marked;
  const { fraction, reason, source } = ELECTROLYTIC_TOLERANCE;
  return applyFormula(capacitanceWithTolerance, { marked, factor: assume('ratio', 1 - fraction, 1, 1 + fraction, reason, source) });
}
