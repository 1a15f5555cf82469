import { OBJECT_ORDER } from '../../standards/usb-pd-message.ts';
import { isMessage, negotiates } from './claims.ts';
import type { OfferRemark, PortOffers } from './judgement.ts';

/** Every USB PD source begins with a fixed supply of 5 V; sinks refuse a message that does not. A label may print it elsewhere. */
export function firstOffer(port: PortOffers): readonly OfferRemark[] {
  const [first] = port.offers;
  if (first === undefined || !negotiates(port) || (first.kind === 'fixed' && first.volts === 5)) return [];
  const has5V = port.offers.some((offer) => offer.kind === 'fixed' && offer.volts === 5);
  const message = has5V
    ? `${first.written} stands first: 5 V must be first.`
    : 'No fixed 5 V is among the offers: every USB PD source has it, in the first place.';
  return [
    { rule: 'first-offer', severity: isMessage(port) ? 'error' : 'warning', message, source: OBJECT_ORDER.source, at: has5V ? 0 : null },
  ];
}
