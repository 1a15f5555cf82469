import { OBJECT_COUNTS } from '../../standards/usb-pd-message.ts';
import { negotiates } from './claims.ts';
import type { JudgedOffer, OfferRemark, PortOffers } from './judgement.ts';

export function isEprOffer(offer: JudgedOffer): boolean {
  return offer.kind === 'EPR AVS' || (offer.kind === 'fixed' && offer.volts > 20);
}

/** A message holds seven objects; an EPR message eleven, seven of them for the part to 20 V. More cannot have been sent. */
export function offerCount(port: PortOffers): readonly OfferRemark[] {
  if (!negotiates(port)) return [];
  const negotiated = port.offers.map((offer, index) => ({ offer, index })).filter(({ offer }) => offer.kind !== 'plain');
  const [spr, epr] = [negotiated.filter(({ offer }) => !isEprOffer(offer)), negotiated.filter(({ offer }) => isEprOffer(offer))];
  const tooMany = (found: typeof spr, most: number, of: string): OfferRemark[] => {
    const extra = found[most];
    if (extra === undefined) return [];
    const message = `${found.length} offers ${of}: a message holds ${most}.`;
    return [{ rule: 'offer-count', severity: 'error', message, source: OBJECT_COUNTS.source, at: extra.index }];
  };
  return [...tooMany(spr, OBJECT_COUNTS.spr, 'to 20 V'), ...tooMany(epr, OBJECT_COUNTS.epr, 'of EPR')];
}
