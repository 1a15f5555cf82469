import type { Dimension } from '../units/dimension.ts';
import { EXACT_DIGITS, supportedDigits, writtenDigits } from './supported-digits.ts';
import type { Source, Value } from './value.ts';

/**
 * A value that nobody read and that a derivation has to assume; every value computed from it says so.
 * Where `low`, `nominal` and `high` are one number it is a constant of the derivation, exact by convention.
 *
 * @throws RangeError when the numbers are not finite or not in order: a fault of the program, never of an entry
 */
export function assume<D extends Dimension>(
  dimension: D,
  low: number,
  nominal: number,
  high: number,
  reason: string,
  source: Source,
): Value<D> {
  const inOrder = low <= nominal && nominal <= high && Number.isFinite(low) && Number.isFinite(high);
  if (!inOrder) throw new RangeError(`An assumption needs finite numbers in order, got ${low}, ${nominal}, ${high}: ${reason}`);
  const supported = supportedDigits(low, nominal, high);
  const significant = supported === EXACT_DIGITS ? writtenDigits(nominal) : supported;
  return { dimension, low, nominal, high, significant, origin: { evidence: 'assumed', reason, source } };
}
