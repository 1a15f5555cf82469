import type { Dimension } from '../units/dimension.ts';
import { applyFormula } from './apply-formula.ts';
import type { Formula } from './formula.ts';
import { supportedDigits } from './supported-digits.ts';
import { isMissing, type Known } from './value.ts';

/**
 * One quantity worked by several published methods that disagree. The formula names each method as an input and gives the
 * middle; the interval runs from the lowest to the highest that any method gives, and the trace holds them all.
 *
 * @returns a missing value where one of the methods has none
 */
export function rangeOfMethods<I extends Readonly<Record<string, D>>, D extends Dimension>(
  formula: Formula<I, D>,
  methods: { readonly [K in keyof I]: Known<I[K]> },
): Known<D> {
  const middle = applyFormula(formula, methods);
  if (isMissing(middle)) return middle;
  const results: readonly Known[] = Object.values(methods);
  const known = results.flatMap((result) => (isMissing(result) ? [] : [result]));
  const low = Math.min(middle.nominal, ...known.map((result) => result.low));
  const high = Math.max(middle.nominal, ...known.map((result) => result.high));
  return { ...middle, low, high, significant: Math.min(middle.significant, supportedDigits(low, middle.nominal, high)) };
}
