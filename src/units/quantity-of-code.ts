import { remark, spanBetween, writtenBetween } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import type { CapacitorCode } from './digit-code.ts';
import type { Quantity } from './quantity.ts';

/** The capacitance that a marking such as 104K stands for, in the unit a capacitor of that size is written in. */
export function quantityOfCapacitorCode(cursor: Cursor, code: CapacitorCode, start: number, length: number): Quantity<'capacitance'> {
  const { tolerance, farads } = code;
  const scale = tolerance?.kind === 'absolute' ? 1e-12 : farads;
  const reach = (part: number): number => Number((farads + part * scale).toPrecision(15));
  const written = writtenBetween(cursor, start, start + length);
  const unit = farads < 1e-9 ? 'pF' : farads < 1e-6 ? 'nF' : 'µF';
  remark(cursor, 'note', `${written} is read as the marking of a capacitor`, start, start + length);
  return {
    dimension: 'capacitance',
    low: tolerance === null ? farads : reach(-tolerance.below),
    nominal: farads,
    high: tolerance === null ? farads : reach(tolerance.above),
    bound: 'value',
    qualifier: null,
    significant: 2,
    resolution: code.resolution,
    waveform: null,
    written,
    unit,
    span: spanBetween(cursor, start, start + length),
  };
}
