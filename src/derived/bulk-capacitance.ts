import type { Part } from '../entry/entry.ts';
import { capacitanceWithTolerance } from '../formulas/capacitor/capacitance-with-tolerance.ts';
import { ELECTROLYTIC_TOLERANCE } from '../standards/customary-values.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { assume } from '../values/assume.ts';
import { isMissing, type Known } from '../values/value.ts';
import { capacitorBank } from './capacitor-bank.ts';
import { measuredOf, ratingOf } from './part-rating.ts';

/** Capacitance of all bulk capacitors together; a measured one wins over the marking, which stands for a range. */
export function bulkCapacitance(parts: readonly Part[]): Known<'capacitance'> {
  return capacitorBank(
    parts,
    (part) => measuredOf(part, 'capacitance') ?? withTolerance(ratingOf(part, 'capacitance')),
    'bulk capacitance',
  );
}

/** A marking without tolerance gets the customary one. */
function withTolerance(marked: Known<'capacitance'>): Known<'capacitance'> {
  if (isMissing(marked) || marked.low !== marked.high || marked.origin.evidence === 'measured') return marked;
  const { fraction, reason, source } = ELECTROLYTIC_TOLERANCE;
  return applyFormula(capacitanceWithTolerance, { marked, factor: assume('ratio', 1 - fraction, 1, 1 + fraction, reason, source) });
}
