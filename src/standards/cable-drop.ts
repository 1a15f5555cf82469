import type { Source } from '../values/value.ts';

/** Largest drop of a USB cable at its rated current, connectors included, V. */
export const CABLE_DROP: { readonly supply: number; readonly ground: number; readonly source: Source } = {
  supply: 0.5,
  ground: 0.25,
  source: { title: 'USB Type-C specification, 4.4.1', section: 'as quoted on a public page', standing: 'secondary' },
};

/** Largest resistance, Ω, of supply and ground conductor together for a rated current in A. */
export function largestCableResistance(amperes: number): number {
  return (CABLE_DROP.supply + CABLE_DROP.ground) / amperes;
}
