import type { Fact } from '../entry/entry.ts';
import type { CustomaryValue } from '../standards/customary-values.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Quantity } from '../units/quantity.ts';
import { assume } from '../values/assume.ts';
import { valueOf, type QuantityFact, type ValueOfOptions } from '../values/from-quantity.ts';
import type { Known, Value } from '../values/value.ts';

/** The value of a fact of an entry, under its own data path. */
export function factValue<D extends Dimension>(fact: Fact<D>, options?: ValueOfOptions): Known<D> {
  return valueOf(fact, fact.path.join('.'), options);
}

/** One edge of what was written, as a value without interval: the highest line of "100–240 V" is 240 V. */
export function edgeValue<D extends Dimension>(fact: QuantityFact<D>, edge: 'low' | 'high', at: string): Known<D> {
  const { quantity } = fact;
  const number = quantity[edge] ?? quantity.nominal;
  const single: Quantity<D> = { ...quantity, low: number, nominal: number, high: number };
  return valueOf({ quantity: single, evidence: fact.evidence }, at);
}

/** A customary value as an assumption, with its reason. */
export function assumed<D extends Dimension>(dimension: D, customary: CustomaryValue): Value<D> {
  return assume(dimension, customary.low, customary.nominal, customary.high, customary.reason, customary.source);
}

/** Whether a fact has the dimension that is wanted; a stage parameter may have any. */
export function isOf<D extends Dimension>(fact: Fact | undefined, dimension: D): fact is Fact<D> {
  return fact?.quantity.dimension === dimension;
}
