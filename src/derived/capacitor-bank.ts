import type { Part } from '../entry/entry.ts';
import { parallelCapacitance } from '../formulas/capacitor/parallel-capacitance.ts';
import { seriesCapacitance } from '../formulas/capacitor/series-capacitance.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { foldFormula } from '../values/fold-formula.ts';
import type { Known } from '../values/value.ts';
import { perPiece } from './fitted-parts.ts';

type Capacitance = Known<'capacitance'>;

/**
 * Capacitance of all capacitors of one purpose together. Keys stand side by side; the pieces of one key as its arrangement
 * says, side by side where it says nothing, which is the way that stores and passes more.
 *
 * @param of capacitance of one piece of a key
 */
export function capacitorBank(parts: readonly Part[], of: (part: Part) => Capacitance, what: string): Capacitance {
  const keys = parts.map((part) => {
    return foldFormula(perPiece(part, of(part)), part.arrangement === 'series' ? inSeries : inParallel, what);
  });
  return foldFormula(keys, inParallel, what);
}

function inParallel(first: Capacitance, second: Capacitance): Capacitance {
  return applyFormula(parallelCapacitance, { first, second });
}

function inSeries(first: Capacitance, second: Capacitance): Capacitance {
  return applyFormula(seriesCapacitance, { first, second });
}
