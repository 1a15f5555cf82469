import type { Unit } from '../units/unit.ts';
import { scaleOf } from '../units/display-units.ts';
import type { Dimension } from '../units/dimension.ts';
import { unitSpelt } from './head-unit.ts';

const ZERO = 48;
const NINE = 57;
const LOWER_CASE = 32;
const LETTER_E = 101;

/** Decimal sign of a file. */
export type DecimalSign = 'point' | 'comma';

/** The number in a cell, `NaN` for anything that is no plain decimal number: blank, "nan", "0x1F", "1,5" with a decimal point, "Infinity". */
export function numberInCell(cell: string, decimal: DecimalSign): number {
  const value = Number(decimal === 'comma' ? cell.replace(',', '.') : cell);
  // What JavaScript reads besides decimal numbers begins with 0 and a letter, or is blank (0), or infinite.
  if (value === 0 && !/\d/.test(cell)) return Number.NaN;
  const second = cell.charCodeAt(1);
  if (second > NINE && cell.charCodeAt(0) === ZERO && (second | LOWER_CASE) !== LETTER_E) return Number.NaN;
  if (decimal === 'comma' && cell.includes('.')) return Number.NaN;
  return Number.isFinite(value) ? value : Number.NaN;
}

/** A number with its unit in one cell, in SI units: "20.08 V", "980 mA"; `NaN` where it is none of this dimension. */
export function measuredCell(cell: string, dimension: Dimension, decimal: DecimalSign): number {
  const found = /^\s*([+-]?[\d.,]+(?:[eE][+-]?\d+)?)\s*(\D.*?)\s*$/.exec(cell);
  const unit = found?.[2] === undefined ? null : unitSpelt(found[2], dimension);
  return unit === null ? Number.NaN : numberInCell(found?.[1] ?? '', decimal) * scaleOf(unit) + unit.offset;
}

/** Decimal places of a number as written: 4 for "20.0834"; below zero for none. */
export function writtenPlaces(cell: string, decimal: DecimalSign): number {
  const [mantissa = '', exponent] = cell.trim().toLowerCase().split('e');
  const places = mantissa.split(decimal === 'comma' ? ',' : '.')[1]?.length ?? 0;
  return places - Number(exponent ?? 0);
}

/** What a number of this unit is in SI. */
export function inSi(value: number, unit: Unit): number {
  return value * scaleOf(unit) + unit.offset;
}
