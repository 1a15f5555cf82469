import { OBJECT_ORDER } from '../../standards/usb-pd-message.ts';
import { isMessage, negotiates } from './claims.ts';
import type { JudgedOffer, OfferRemark, PortOffers } from './judgement.ts';

/** Ranks of kinds in a message. Fixed supplies above 20 V belong to the EPR part, behind everything else. */
function rankOf(offer: JudgedOffer): number {
  if (offer.kind === 'fixed') return offer.volts > 20 ? 5 : 0;
  return { battery: 1, variable: 2, 'SPR AVS': 3, PPS: 4, 'EPR AVS': 6, plain: -1 }[offer.kind];
}

/** The voltage by which offers of one kind rise. */
function keyOf(offer: JudgedOffer): number {
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return offer.volts;
    case 'battery':
    case 'variable':
      return offer.minVolts;
    case 'PPS':
    case 'EPR AVS':
      return offer.maxVolts;
    case 'SPR AVS':
      return 0;
  }
}

const NAMES = ['fixed', 'battery', 'variable', 'SPR AVS', 'programmable', 'EPR fixed', 'EPR AVS'] as const;

/** By what each kind rises, in words. */
const RISING_BY = ['voltage', 'lowest voltage', 'lowest voltage', 'current', 'highest voltage', 'voltage', 'highest voltage'] as const;

/** Kinds come in a set order, and each kind rises in voltage. Order in a text is a label's own choice, so that is only noted. */
export function offerOrder(port: PortOffers): readonly OfferRemark[] {
  if (!negotiates(port)) return [];
  const negotiated = port.offers.map((offer, index) => ({ offer, index })).filter(({ offer }) => offer.kind !== 'plain');
  const severity = isMessage(port) ? 'warning' : 'note';
  return negotiated.flatMap(({ offer, index }, place): OfferRemark[] => {
    const before = negotiated[place - 1]?.offer;
    // A 5 V that does not stand first is the matter of another rule.
    if (before === undefined || (offer.kind === 'fixed' && offer.volts === 5)) return [];
    const [rank, rankBefore] = [rankOf(offer), rankOf(before)];
    const name = NAMES[rank] ?? offer.kind;
    if (rank < rankBefore) {
      const message = `${offer.written}: ${name} after ${NAMES[rankBefore] ?? before.kind}; the order is fixed, battery, variable, SPR AVS, programmable, then EPR.`;
      return [{ rule: 'offer-order', severity, message, source: OBJECT_ORDER.source, at: index }];
    }
    if (rank > rankBefore || keyOf(offer) >= keyOf(before)) return [];
    const message = `${offer.written} after ${before.written}: ${name} offers are not rising in ${RISING_BY[rank] ?? 'voltage'}.`;
    return [{ rule: 'offer-order', severity, message, source: OBJECT_ORDER.source, at: index }];
  });
}
