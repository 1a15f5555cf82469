import { PPS_CURRENTS, requiredRanges } from '../../standards/usb-pd-adjustable-supplies.ts';
import { nominalPpsVolts, offerWatts } from '../offer-watts.ts';
import { claims, JUDGED_REVISION, ratedWatts, short, visibleWatts } from './claims.ts';
import type { JudgedOffer, OfferRemark, PortOffers } from './judgement.ts';

const RULE = 'pps-currents';

interface PlacedRange {
  readonly offer: Extract<JudgedOffer, { kind: 'PPS' }>;
  readonly index: number;
}

/** A source that has PPS has the ranges and currents of its rated power; watts are counted at the nominal voltage of a range. */
export function ppsCurrents(port: PortOffers): readonly OfferRemark[] {
  const ranges = port.offers.flatMap((offer, index): PlacedRange[] => (offer.kind === 'PPS' ? [{ offer, index }] : []));
  const rated = ratedWatts(port);
  if (ranges.length === 0 || rated === null) return [];
  return [...tooLittle(port, ranges, rated), ...ranges.flatMap((range) => tooMuch(port, range, rated))];
}

/** A range further up serves what a lower one would: its volts begin as low. */
function tooLittle(port: PortOffers, ranges: readonly PlacedRange[], rated: number): readonly OfferRemark[] {
  return requiredRanges(Math.min(visibleWatts(port, rated), 100)).flatMap(({ nominal, amps }): OfferRemark[] => {
    const reach = ranges.filter(({ offer }) => nominalPpsVolts(offer.maxVolts) >= nominal - 0.05);
    const best = Math.max(0, ...reach.map(({ offer }) => offer.amps));
    if (best >= amps - 1e-9) return [];
    const lacking = reach.length === 0 ? `no PPS range reaches ${nominal} V` : `PPS at ${nominal} V carries ${short(best)} A`;
    const message = `A ${short(rated)} W source with PPS must carry ${short(amps)} A at ${nominal} V: ${lacking}.`;
    return [
      {
        rule: RULE,
        severity: claims(port.revision, JUDGED_REVISION) ? 'warning' : 'note',
        message,
        source: PPS_CURRENTS.source,
        at: reach[0]?.index ?? ranges[0]?.index ?? null,
      },
    ];
  });
}

/** Above the rated power only a source that says so, by the power-limited bit of its word. */
function tooMuch(port: PortOffers, { offer, index }: PlacedRange, rated: number): readonly OfferRemark[] {
  const watts = offerWatts(offer);
  const nominal = nominalPpsVolts(offer.maxVolts);
  const most = port.rated?.high ?? rated;
  if (offer.powerLimited === true || watts <= most * 1.01 + 1e-9) return [];
  const counted = `${offer.written} is ${short(nominal)} V × ${short(offer.amps)} A = ${short(watts)} W at its nominal voltage, above ${short(most)} W`;
  const message =
    offer.powerLimited === false
      ? `${counted}, and its power-limited bit is not set.`
      : `${counted}; the word’s power-limited bit would say whether that is meant.`;
  return [{ rule: RULE, severity: offer.powerLimited === false ? 'warning' : 'note', message, source: PPS_CURRENTS.source, at: index }];
}
