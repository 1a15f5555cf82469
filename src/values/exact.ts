import type { Dimension } from '../units/dimension.ts';
import { EXACT_DIGITS } from './supported-digits.ts';
import type { Value } from './value.ts';

const BY_DEFINITION = 'exact by definition';

/** A number that is exact by definition, such as the quality factor of a tank without load. */
export function exact<D extends Dimension>(dimension: D, number: number): Value<D> {
  const source = { title: 'Definition', section: '', standing: 'common practice' } as const;
  const origin = { evidence: 'assumed', reason: BY_DEFINITION, source } as const;
  return { dimension, low: number, nominal: number, high: number, significant: EXACT_DIGITS, origin };
}

/** Whether a number is exact by definition: it has the form of an assumption, and nobody assumed anything. */
export function isByDefinition({ origin }: Value): boolean {
  return origin.evidence === 'assumed' && origin.reason === BY_DEFINITION;
}
