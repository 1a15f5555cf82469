import { UNIT_SPELLINGS } from '../units/unit-table.ts';
import { SI_UNITS, type Dimension } from '../units/dimension.ts';

/** An SI number of a dimension in a unit of it; null for a unit that the dimension does not have. */
export function numberInUnit(si: number, dimension: Dimension, unit: string): number | null {
  if (unit === SI_UNITS[dimension]) return si;
  const found = UNIT_SPELLINGS.get(unit)?.find((candidate) => candidate.dimension === dimension);
  if (found === undefined) return null;
  const scaled = (si - found.offset) / found.factor;
  // What stands beyond the 14th digit comes from the conversion: 0.923 is 92.3 % and not 92.30000000000001 %.
  return Number((scaled / Number(`1e${found.exponent}`)).toPrecision(14));
}

/** A number with so many significant digits as plain decimal digits, for data files: 37.5, 1600, 0.0000047. */
export function plainDecimal(number: number, significant: number): string {
  if (number === 0 || !Number.isFinite(number)) return '0';
  const digits = Math.min(15, Math.max(1, significant));
  const decimals = digits - 1 - Math.floor(Math.log10(Math.abs(Number(number.toPrecision(digits)))));
  return decimals > 0 ? number.toFixed(Math.min(decimals, 20)) : String(Math.round(number / 10 ** -decimals) * 10 ** -decimals);
}
