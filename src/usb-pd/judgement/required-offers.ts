import { FIXED_ROUNDING, FIXED_SUPPLIES, requiredSupplies } from '../../standards/usb-pd-fixed-supplies.ts';
import type { RequiredSupply } from '../../standards/usb-pd-fixed-supplies.ts';
import { fixedOffers, negotiates, ratedWatts, short, visibleWatts } from './claims.ts';
import type { OfferRemark, PortOffers } from './judgement.ts';

/** A rated power decides which fixed voltages a source must offer and how much current each carries, 10 mA either way. */
export function requiredOffers(port: PortOffers): readonly OfferRemark[] {
  const rated = ratedWatts(port);
  if (rated === null || !negotiates(port) || port.connector !== 'USB-C') return [];
  const watts = visibleWatts(port, rated);
  const of = port.rated === null ? `${short(rated)} W, which its offers reach` : `${short(rated)} W`;
  return requiredSupplies(watts).flatMap((needed) => remarkOn(port, needed, of));
}

function remarkOn(port: PortOffers, { volts, amps }: RequiredSupply, of: string): readonly OfferRemark[] {
  const found = fixedOffers(port.offers).filter((offer) => offer.volts === volts);
  const best = Math.max(0, ...found.map((offer) => offer.amps));
  if (best >= amps - FIXED_ROUNDING.amps - 1e-9) return [];
  const rule = 'required-offers';
  const source = FIXED_SUPPLIES.source;
  // 5 V missing altogether is the matter of the rule on the first offer.
  if (found.length === 0) {
    if (volts === 5) return [];
    // A maker's own protocol may be what carries the stated power.
    const severity = port.protocols.length > 0 ? 'note' : 'warning';
    return [
      { rule, severity, message: `No fixed ${short(volts)} V: a source of ${of} must offer it with ${short(amps)} A.`, source, at: null },
    ];
  }
  const message = `${short(volts)} V carries ${short(best)} A; a source of ${of} must offer ${short(Number(amps.toFixed(2)))} A there (10 mA less or more is rounding).`;
  return [{ rule, severity: 'warning', message, source, at: found[0]?.index ?? null }];
}
