import { SI_UNITS } from '../units/dimension.ts';
import type { Quantity } from '../units/quantity.ts';

/** A prefix as the trade writes it, with its factor. */
export interface UnitPrefix {
  readonly prefix: string;
  readonly factor: number;
}

/** Prefixes that occur in ratings; c, d and h do not. */
export const PREFIXES: readonly UnitPrefix[] = [
  { prefix: 'p', factor: 1e-12 },
  { prefix: 'n', factor: 1e-9 },
  { prefix: 'µ', factor: 1e-6 },
  { prefix: 'm', factor: 1e-3 },
  { prefix: '', factor: 1 },
  { prefix: 'k', factor: 1e3 },
  { prefix: 'M', factor: 1e6 },
];

/** Prefix with which a quantity was written; none for units that are not a prefix and the SI unit (°C, Ah). */
export function prefixOf(quantity: Quantity): UnitPrefix {
  const base = SI_UNITS[quantity.dimension];
  const found = PREFIXES.find(({ prefix }) => prefix + base === quantity.unit);
  return found ?? { prefix: '', factor: 1 };
}
