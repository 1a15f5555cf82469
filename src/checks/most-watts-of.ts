import type { Offer } from '../usb-pd/offer.ts';

/** Highest power an offer can reach, in watts; for a programmable one without regard to a power limit of its port. */
export function mostWattsOf(offer: Offer): number {
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return offer.volts * offer.amps;
    case 'variable':
    case 'PPS':
      return offer.maxVolts * offer.amps;
    case 'battery':
    case 'EPR AVS':
      return offer.watts;
    case 'SPR AVS':
      return Math.max(15 * offer.ampsTo15V, 20 * (offer.ampsTo20V ?? 0));
  }
}
