import type { OfferBody } from './offer.ts';

/** Tops of the programmable ranges with their nominal voltages. USB PD R3.2 V1.1, Table 10.11; 5.9 V belongs to PD 3.0 and 3.1. */
const NOMINAL_VOLTS: readonly (readonly [number, number])[] = [
  [5.9, 5],
  [11, 9],
  [16, 15],
  [21, 20],
];

/** Nominal voltage of a programmable range: 20 V for one that ends at 21 V; its own top for one that is no named range. */
export function nominalPpsVolts(maxVolts: number): number {
  const named = NOMINAL_VOLTS.find(([top]) => Math.abs(top - maxVolts) < 0.05);
  return named === undefined ? maxVolts : named[1];
}

/** The most power that an offer stands for, in watts: V × I, the rated power of a battery or EPR AVS object, PPS at its nominal voltage. */
export function offerWatts(offer: OfferBody): number {
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return clean(offer.volts * offer.amps);
    case 'variable':
      return clean(offer.maxVolts * offer.amps);
    case 'battery':
    case 'EPR AVS':
      return offer.watts;
    case 'PPS':
      return clean(nominalPpsVolts(offer.maxVolts) * offer.amps);
    case 'SPR AVS':
      return clean(Math.max(15 * offer.ampsTo15V, 20 * (offer.ampsTo20V ?? 0)));
  }
}

/** 12 V × 1.67 A is 20.04 W, not 20.039999. */
function clean(watts: number): number {
  return Number(watts.toPrecision(12));
}
