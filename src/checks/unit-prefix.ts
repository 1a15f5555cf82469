import { SI_UNITS } from '../units/dimension.ts';
import { PREFIXES as ALL_PREFIXES } from '../units/prefixes.ts';
import type { Quantity } from '../units/quantity.ts';

/** A prefix as the trade writes it, with its factor. */
export interface UnitPrefix {
  readonly prefix: string;
  readonly factor: number;
}

/** Prefixes that can stand before the unit of a rating, the smallest first. */
export const PREFIXES: readonly UnitPrefix[] = ALL_PREFIXES.map(({ symbol, exponent }) => ({
  prefix: symbol,
  factor: Number(`1e${exponent}`),
}));

/** Prefix with which a quantity was written; none for units that are not a prefix and the SI unit (°C, Ah). */
export function prefixOf(quantity: Quantity): UnitPrefix {
  const base = SI_UNITS[quantity.dimension];
  return PREFIXES.find(({ prefix }) => prefix + base === quantity.unit) ?? { prefix: '', factor: 1 };
}
