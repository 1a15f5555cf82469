import type { Port } from '../../entry/entry.ts';

/** Lowest and highest voltage that a port offers as a fixed one; null where it offers none. */
export function settingsOf({ offers }: Port): { readonly lowest: number; readonly highest: number } | null {
  const volts = offers.flatMap((offer) => (offer.kind === 'fixed' || offer.kind === 'plain' ? [offer.volts] : []));
  return volts.length === 0 ? null : { lowest: Math.min(...volts), highest: Math.max(...volts) };
}

/** Most amperes that a port offers at any fixed voltage; null where it offers none. */
export function mostAmps({ offers }: Port): number | null {
  const amps = offers.flatMap((offer) => (offer.kind === 'fixed' || offer.kind === 'plain' ? [offer.amps] : []));
  return amps.length === 0 ? null : Math.max(...amps);
}
