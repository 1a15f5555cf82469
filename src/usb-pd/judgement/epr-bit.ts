import { EPR_CAPABLE_BIT } from '../../standards/usb-pd-message.ts';
import { decodeObject } from '../power-data-object.ts';
import { ratedWatts, short } from './claims.ts';
import type { OfferRemark, PortOffers } from './judgement.ts';
import { isEprOffer } from './offer-count.ts';

/** Bit 23 of the first word says that a source is made for more than 100 W. Only a word can tell it. */
export function eprBit(port: PortOffers): readonly OfferRemark[] {
  const [first] = port.offers;
  const object = first?.word == null ? null : decodeObject(first.word);
  if (first === undefined || object?.kind !== 'fixed') return [];
  const say = (message: string): readonly OfferRemark[] => [
    { rule: 'epr-bit', severity: 'warning', message, source: EPR_CAPABLE_BIT.source, at: 0 },
  ];
  const beyond = port.offers.find(isEprOffer);
  if (object.eprCapable === 0 && beyond !== undefined)
    return say(`${beyond.written} is of EPR, and the EPR capable bit (23) of ${first.written} is not set.`);
  const rated = ratedWatts(port);
  if (rated === null || port.rated === null) return [];
  if (object.eprCapable === 1 && port.rated.high <= EPR_CAPABLE_BIT.above) {
    return say(
      `${first.written} has the EPR capable bit (23) set, which is for sources above 100 W; this one is stated at ${port.rated.written}.`,
    );
  }
  if (object.eprCapable === 0 && rated > EPR_CAPABLE_BIT.above && port.protocols.length === 0) {
    return say(`A source of ${short(rated)} W has the EPR capable bit (23) set; ${first.written} has not.`);
  }
  return [];
}
