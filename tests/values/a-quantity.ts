import type { Dimension } from '../../src/units/dimension.ts';
import type { Quantity } from '../../src/units/quantity.ts';
import type { Value } from '../../src/values/value.ts';

/** A plain quantity in SI units, as if it had been read; `more` changes what a test is about. */
export function aQuantity<D extends Dimension>(dimension: D, nominal: number, more: Partial<Quantity<D>> = {}): Quantity<D> {
  return {
    dimension,
    low: nominal,
    nominal,
    high: nominal,
    bound: 'value',
    qualifier: null,
    significant: 3,
    resolution: 1,
    waveform: null,
    written: `${nominal} of ${dimension}`,
    unit: '',
    span: { start: 0, end: 0 },
    ...more,
  };
}

/** A value that somebody measured, with its interval. */
export function measuredValue<D extends Dimension>(dimension: D, low: number, nominal: number, high: number, significant = 3): Value<D> {
  return { dimension, low, nominal, high, significant, origin: { evidence: 'measured', written: `${nominal}`, at: 'test' } };
}
