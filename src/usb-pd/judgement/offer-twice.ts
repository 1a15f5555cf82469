import { NO_TWINS } from '../../standards/usb-pd-message.ts';
import { negotiates } from './claims.ts';
import type { JudgedOffer, OfferRemark, PortOffers } from './judgement.ts';

/** What makes two offers of a kind the same: the voltage of a fixed one, the range of a battery or variable one, range and current of PPS. */
function identityOf(offer: JudgedOffer): string {
  switch (offer.kind) {
    case 'fixed':
      return `fixed ${offer.volts}`;
    case 'battery':
    case 'variable':
      return `${offer.kind} ${offer.minVolts} ${offer.maxVolts}`;
    case 'PPS':
      return `PPS ${offer.minVolts} ${offer.maxVolts} ${offer.amps}`;
    case 'SPR AVS':
    case 'EPR AVS':
      return offer.kind;
    case 'plain':
      return `plain ${offer.volts} ${offer.amps}`;
  }
}

/** No two objects of a kind say the same voltage; a source that sends such a list is refused by some sinks. */
export function offerTwice(port: PortOffers): readonly OfferRemark[] {
  if (!negotiates(port)) return [];
  const seen = new Map<string, JudgedOffer>();
  return port.offers.flatMap((offer, index): OfferRemark[] => {
    const identity = identityOf(offer);
    const earlier = seen.get(identity);
    if (earlier === undefined) {
      seen.set(identity, offer);
      return [];
    }
    const message = `${offer.written} is a duplicate: ${earlier.written} offers the same voltage already.`;
    return [{ rule: 'offer-twice', severity: 'warning', message, source: NO_TWINS.source, at: index }];
  });
}
