import type { Dimension } from '../units/dimension.ts';
import type { Formula } from './formula.ts';

/** Declares a formula and keeps the dimension of each of its inputs in its type. */
export function defineFormula<const I extends Readonly<Record<string, Dimension>>, const D extends Dimension>(
  formula: Formula<I, D>,
): Formula<I, D> {
  return formula;
}
