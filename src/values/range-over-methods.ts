import type { Dimension } from '../units/dimension.ts';
import type { Formula } from './formula.ts';
import { joinMissing } from './missing.ts';
import { supportedDigits } from './supported-digits.ts';
import { isMissing, type Known, type Missing, type Value } from './value.ts';

/**
 * What several published methods give for one quantity: nominal their mean, the interval from the lowest to the highest of them.
 * A method whose inputs are missing is left out; where all are, the result is missing with what they need.
 *
 * @param formula declares the methods as its inputs, so that its page names them
 */
export function rangeOverMethods<D extends Dimension>(formula: Pick<Formula, 'id'>, methods: Readonly<Record<string, Known<D>>>): Known<D> {
  const named = Object.entries(methods);
  const known = named.filter((entry): entry is [string, Value<D>] => !isMissing(entry[1]));
  const first = known[0];
  if (first === undefined) return joinMissing(named.map(([, one]) => one).filter((one): one is Missing => isMissing(one)));
  const values = known.map(([, value]) => value);
  const low = Math.min(...values.map((value) => value.low));
  const high = Math.max(...values.map((value) => value.high));
  const nominal = values.reduce((sum, value) => sum + value.nominal, 0) / values.length;
  return {
    dimension: first[1].dimension,
    low,
    nominal,
    high,
    significant: Math.min(...values.map((value) => value.significant), supportedDigits(low, nominal, high)),
    origin: { evidence: 'computed', formula: formula.id, inputs: Object.fromEntries(known) },
  };
}
