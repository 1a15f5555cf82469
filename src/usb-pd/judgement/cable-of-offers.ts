import { CABLE_CURRENT, EPR_CABLE } from '../../standards/usb-output-limits.ts';
import { offerWatts } from '../offer-watts.ts';
import { negotiates, short } from './claims.ts';
import type { JudgedOffer, OfferRemark, PortOffers } from './judgement.ts';
import { isEprOffer } from './offer-count.ts';

const RULE = 'cable-of-offers';

function ampsOf(offer: JudgedOffer): number {
  switch (offer.kind) {
    case 'EPR AVS':
      return 5;
    case 'SPR AVS':
      return Math.max(offer.ampsTo15V, offer.ampsTo20V ?? 0);
    case 'battery':
      return offer.watts / offer.minVolts;
    case 'fixed':
    case 'plain':
    case 'variable':
    case 'PPS':
      return offer.amps;
  }
}

function voltsOf(offer: JudgedOffer): number {
  if (offer.kind === 'fixed' || offer.kind === 'plain') return offer.volts;
  return offer.kind === 'SPR AVS' ? 20 : offer.maxVolts;
}

/** More than 3 A needs a marked cable, more than 20 V one marked for EPR; and a list that was read through a lesser cable shows less. */
export function cableOfOffers(port: PortOffers): readonly OfferRemark[] {
  if (!negotiates(port) || port.connector !== 'USB-C') return [];
  return [...throughCable(port), ...understated(port)];
}

function throughCable(port: PortOffers): readonly OfferRemark[] {
  const high = port.offers.findIndex((offer) => voltsOf(offer) > EPR_CABLE.above + 1.5);
  const strong = port.offers.findIndex((offer) => ampsOf(offer) > CABLE_CURRENT.amps + 1e-9);
  const at = high !== -1 ? high : strong;
  const offer = port.offers[at];
  if (offer === undefined) return [];
  const kind = high !== -1 ? 'a cable marked for EPR' : 'a cable marked 5 A';
  const source = high !== -1 ? EPR_CABLE.source : CABLE_CURRENT.source;
  if (port.cable === null) {
    return [
      { rule: RULE, severity: 'note', message: `${offer.written} needs ${kind}; the cable of the reading is not named.`, source, at },
    ];
  }
  const isBorne = port.cable === 'EPR cable' || port.cable === 'captive cable' || (port.cable === 'marked cable' && high === -1);
  if (isBorne) return [];
  const message = `${offer.written} needs ${kind}, and the offers were read through ${port.cable === 'unmarked cable' ? 'an unmarked cable' : 'a marked cable'}.`;
  return [{ rule: RULE, severity: 'warning', message, source, at }];
}

/** A source shows only what the cable bears: 60 W through one without a mark, 100 W through one that is not for EPR. */
function understated(port: PortOffers): readonly OfferRemark[] {
  const stated = port.rated?.low ?? null;
  const most = Math.max(...port.offers.map(offerWatts));
  const say = (message: string, source: OfferRemark['source']): readonly OfferRemark[] => [
    { rule: RULE, severity: 'note', message, source, at: null },
  ];
  if (port.cable === 'unmarked cable' && (stated === null ? Math.abs(most - 60) < 1 : stated > 60)) {
    const of = stated === null ? 'this one' : `this one, stated at ${short(stated)} W,`;
    return say(
      `Read through an unmarked cable, with which a source shows 60 W at most: ${of} may offer more through a marked one.`,
      CABLE_CURRENT.source,
    );
  }
  if (port.cable === 'marked cable' && stated !== null && stated > 100 && !port.offers.some(isEprOffer)) {
    return say(
      `Read through a cable that is not marked for EPR, with which nothing above 20 V shows; the port is stated at ${short(stated)} W.`,
      EPR_CABLE.source,
    );
  }
  return [];
}
