import { LEAST_PPS_AMPS, OLDER_PPS_RANGES, PPS_RANGES } from '../../standards/usb-pd-adjustable-supplies.ts';
import { claims, JUDGED_REVISION, short } from './claims.ts';
import type { OfferRemark, PortOffers } from './judgement.ts';

const RULE = 'pps-ranges';

function isOneOf(value: number, values: readonly number[]): boolean {
  return values.some((each) => Math.abs(each - value) < 0.05);
}

/** PPS ranges have names and set ends: 5 V to 11, 16 or 21 V; older revisions began at 3.0 or 3.3 V and had 5.9 V too. */
export function ppsRanges(port: PortOffers): readonly OfferRemark[] {
  const isBound = claims(port.revision, JUDGED_REVISION);
  return port.offers.flatMap((offer, index): OfferRemark[] => {
    if (offer.kind !== 'PPS') return [];
    const remarks: OfferRemark[] = [];
    const say = (message: string, severity: 'warning' | 'note'): void => {
      remarks.push({ rule: RULE, severity, message, source: PPS_RANGES.source, at: index });
    };
    const tops = PPS_RANGES.ranges.map(({ top }) => top);
    if (!isOneOf(offer.maxVolts, tops)) {
      const isOlder = isOneOf(
        offer.maxVolts,
        OLDER_PPS_RANGES.ranges.map(({ top }) => top),
      );
      if (isOlder)
        say(
          `${offer.written}: R3.2 has no PPS range that ends at ${short(offer.maxVolts)} V; older revisions had it.`,
          isBound ? 'warning' : 'note',
        );
      else
        say(
          `${offer.written}: no PPS range ends at ${short(offer.maxVolts)} V; they end at 11, 16 and 21 V.`,
          offer.maxVolts > 21 || isBound ? 'warning' : 'note',
        );
    }
    if (!isOneOf(offer.minVolts, [PPS_RANGES.floor])) {
      const isOlder = isOneOf(offer.minVolts, OLDER_PPS_RANGES.floors);
      if (isOlder)
        say(
          `${offer.written}: R3.2 lets PPS begin at 5 V; ${short(offer.minVolts)} V is of an older revision.`,
          isBound ? 'warning' : 'note',
        );
      else say(`${offer.written}: PPS begins at 5 V, in older revisions at 3.3 or 3 V, not at ${short(offer.minVolts)} V.`, 'warning');
    }
    if (offer.amps < LEAST_PPS_AMPS.amps) {
      const message = `${offer.written}: ${short(offer.amps)} A is below 1 A, the least to which a PPS current limit can be set.`;
      remarks.push({ rule: RULE, severity: 'note', message, source: LEAST_PPS_AMPS.source, at: index });
    }
    return remarks;
  });
}
