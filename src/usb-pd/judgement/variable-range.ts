import { VARIABLE_RANGE } from '../../standards/usb-pd-message.ts';
import { short } from './claims.ts';
import type { OfferRemark, PortOffers } from './judgement.ts';

/** The lowest voltage of a variable supply is at least 80 % of its highest: it is one voltage that wanders, not a range to choose from. */
export function variableRange(port: PortOffers): readonly OfferRemark[] {
  return port.offers.flatMap((offer, at): OfferRemark[] => {
    if (offer.kind !== 'variable' || offer.minVolts >= VARIABLE_RANGE.least * offer.maxVolts - 1e-9) return [];
    const message = `${offer.written}: ${short(offer.minVolts)} V is less than 80 % of ${short(offer.maxVolts)} V, which a variable supply holds.`;
    return [{ rule: 'variable-range', severity: 'warning', message, source: VARIABLE_RANGE.source, at }];
  });
}
