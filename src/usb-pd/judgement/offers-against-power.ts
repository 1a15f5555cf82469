import { FIXED_ROUNDING } from '../../standards/usb-pd-fixed-supplies.ts';
import type { Source } from '../../values/value.ts';
import { offerWatts } from '../offer-watts.ts';
import { short, visibleWatts } from './claims.ts';
import type { JudgedOffer, OfferRemark, PortOffers } from './judgement.ts';

const RULE = 'offers-against-rated-power';

/** Printed powers round: slack as a fraction, or one last digit of the current, whichever is more. */
const PRINTED_SLACK = 0.01;

export const ROUNDED_LABELS: Source = {
  title: 'Retail listings of 20 W and 25 W adapters',
  section: '9 V × 2.22 A = 19.98 W and 12 V × 1.67 A = 20.04 W are both sold as 20 W: slack of 1 % or one last digit (10 mA)',
  standing: 'read',
};

/** An offer above the stated power, and a stated power that no offer reaches. */
export function offersAgainstPower(port: PortOffers): readonly OfferRemark[] {
  return [...above(port), ...outOfReach(port)];
}

function slack(watts: number, offers: readonly JudgedOffer[]): number {
  const volts = Math.max(0, ...offers.map((offer) => (offer.kind === 'fixed' || offer.kind === 'plain' ? offer.volts : 0)));
  return Math.max(watts * PRINTED_SLACK, volts * FIXED_ROUNDING.amps);
}

/** PPS has its own rule, as its watts may be limited by the source itself; SPR AVS carries the currents of fixed supplies. */
function above({ offers, rated }: PortOffers): readonly OfferRemark[] {
  if (rated === null) return [];
  return offers.flatMap((offer, at): OfferRemark[] => {
    if (offer.kind === 'PPS' || offer.kind === 'SPR AVS') return [];
    const watts = offerWatts(offer);
    if (watts <= rated.high + slack(rated.high, [offer])) return [];
    const message = `${offer.written} is ${short(watts)} W, above the stated ${rated.written}.`;
    return [{ rule: RULE, severity: 'warning', message, source: ROUNDED_LABELS, at }];
  });
}

/** A maker's own protocol may carry more than the offers listed, and a lesser cable hides some. */
function outOfReach(port: PortOffers): readonly OfferRemark[] {
  const { offers, rated, protocols } = port;
  if (rated === null || offers.length === 0 || protocols.length > 0) return [];
  const most = Math.max(...offers.map(offerWatts));
  const visible = port.connector === 'USB-C' ? visibleWatts(port, rated.low) : rated.low;
  if (most >= visible - slack(visible, offers)) return [];
  const message = `${rated.written} is stated, and the largest offer is ${short(most)} W.`;
  return [{ rule: RULE, severity: 'warning', message, source: ROUNDED_LABELS, at: 'power' }];
}
