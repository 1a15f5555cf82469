import { missing } from './missing.ts';
import type { Known } from './value.ts';
import type { Dimension } from '../units/dimension.ts';

/**
 * Folds a relation declared for two over any number of values: three resistors in parallel are two of them in
 * parallel with the third. A single value stands for itself; none is a missing one that names `what`.
 */
export function foldFormula<D extends Dimension>(
  values: readonly Known<D>[],
  combine: (first: Known<D>, second: Known<D>) => Known<D>,
  what: string,
): Known<D> {
  const [first, ...rest] = values;
  if (first === undefined) return missing(`no ${what} given`, [what]);
  return rest.reduce(combine, first);
}
