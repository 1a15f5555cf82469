import type { Dimension } from '../units/dimension.ts';
import { EXACT_DIGITS } from './supported-digits.ts';
import type { Value } from './value.ts';

/** A number that is exact by definition, such as the quality factor of a tank without load. */
export function exact<D extends Dimension>(dimension: D, number: number): Value<D> {
  const source = { title: 'Definition', section: '', standing: 'common practice' } as const;
  const origin = { evidence: 'assumed', reason: 'exact by definition', source } as const;
  return { dimension, low: number, nominal: number, high: number, significant: EXACT_DIGITS, origin };
}
