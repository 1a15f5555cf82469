import { offerWatts } from './offer-watts.ts';
import type { OfferBody } from './offer.ts';

/**
 * The most watts that a device can draw from an offer, which may be more than it stands for: a PPS supply that does not limit its
 * power gives its current up to the top of its range, so 3.3–11 V 3 A counts as 27 W and can carry 33 W.
 */
export function mostWatts(offer: OfferBody): number {
  if (offer.kind !== 'PPS' || offer.powerLimited === true) return offerWatts(offer);
  return Number((offer.maxVolts * offer.amps).toPrecision(12));
}
