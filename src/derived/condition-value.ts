import type { MeasuredPoint } from '../entry/entry.ts';
import type { Dimension } from '../units/dimension.ts';
import { readQuantity } from '../units/read-quantity.ts';
import { valueOf } from '../values/from-quantity.ts';
import { missing } from '../values/missing.ts';
import { isMissing, type Known } from '../values/value.ts';

/**
 * A condition of a measured figure as a value: the air temperature, the time since power was applied.
 *
 * @param words what it is called in a reason: "air temperature"
 */
export function conditionValue<D extends Dimension>(point: MeasuredPoint, condition: string, dimension: D, words: string): Known<D> {
  const written = point.conditions[condition];
  if (written === undefined) return missing(`${words} not given`, [condition]);
  const reading = readQuantity(written, dimension);
  const value = reading.ok ? valueOf({ quantity: reading.value, evidence: 'measured' }, [...point.path, condition].join('.')) : null;
  return value === null || isMissing(value) ? missing(`${words} not readable: ${written}`, [condition]) : value;
}
