import type { Dimension } from '../../src/units/dimension.ts';
import type { Quantity } from '../../src/units/quantity.ts';
import { readQuantity } from '../../src/units/read-quantity.ts';

/** Room beyond the last printed digit, as a fraction of the printed value, and why the source needs it. */
export interface Allowance {
  readonly fraction: number;
  readonly reason: string;
}

export interface Comparison {
  readonly agrees: boolean;
  /** "computed 559.8 V, printed 560 V ± 5 V". */
  readonly says: string;
}

/** Binary fractions miss a decimal one by this much at most; a value half-way between two printed digits counts as agreeing. */
const BINARY_SLACK = 1e-12;

/**
 * Compares a computed number (SI) with a value as printed: they agree within half of the last printed digit. Nobody picks a
 * tolerance; where a source rounds intermediates, the allowance stands beside the value with its reason.
 */
export function published(computed: number, printed: string, dimension: Dimension, allowance: Allowance | null = null): Comparison {
  const quantity = quantityOf(printed, dimension);
  const room = quantity.resolution / 2 + Math.abs(quantity.nominal) * ((allowance?.fraction ?? 0) + BINARY_SLACK);
  const distance = Math.abs(computed - quantity.nominal);
  return { agrees: distance <= room, says: `computed ${computed}, printed ${printed} = ${quantity.nominal} ± ${room} (SI)` };
}

/** A printed value with its unit; a number without one is a ratio. Throws where the text cannot be read: a fault of the test. */
export function quantityOf(printed: string, dimension: Dimension): Quantity {
  if (dimension === 'ratio' && /^[0-9.]+$/u.test(printed)) return plainRatio(printed);
  const reading = readQuantity(printed, dimension);
  if (!reading.ok) throw new Error(`"${printed}" is not a ${dimension}: ${reading.remarks.map((remark) => remark.message).join('; ')}`);
  return reading.value;
}

function plainRatio(printed: string): Quantity<'ratio'> {
  const nominal = Number(printed);
  const decimals = printed.split('.')[1]?.length ?? 0;
  return {
    dimension: 'ratio',
    low: nominal,
    nominal,
    high: nominal,
    bound: 'value',
    qualifier: null,
    significant: printed.replace('.', '').replace(/^0+/u, '').length,
    resolution: 10 ** -decimals,
    waveform: null,
    written: printed,
    unit: '',
    span: { start: 0, end: printed.length },
  };
}
