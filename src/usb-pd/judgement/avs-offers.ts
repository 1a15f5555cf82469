import { EPR_AVS, eprAvsTop, SPR_AVS } from '../../standards/usb-pd-adjustable-supplies.ts';
import { FIXED_ROUNDING } from '../../standards/usb-pd-fixed-supplies.ts';
import { claims, fixedOffers, isMessage, JUDGED_REVISION, negotiates, ratedWatts, short } from './claims.ts';
import type { JudgedOffer, OfferRemark, PortOffers } from './judgement.ts';

const RULE = 'avs-offers';

/** Adjustable voltage supplies: their range and power for EPR, their currents for SPR, and where one must be. */
export function avsOffers(port: PortOffers): readonly OfferRemark[] {
  if (!negotiates(port)) return [];
  const each = port.offers.flatMap((offer, index) => {
    if (offer.kind === 'EPR AVS') return eprAvs(port, offer, index);
    return offer.kind === 'SPR AVS' ? sprAvs(port, offer, index) : [];
  });
  return [...each, ...missingEpr(port), ...missingSpr(port)];
}

function eprAvs(port: PortOffers, offer: Extract<JudgedOffer, { kind: 'EPR AVS' }>, at: number): readonly OfferRemark[] {
  const say = (message: string): OfferRemark => ({ rule: RULE, severity: 'warning', message, source: EPR_AVS.source, at });
  const remarks: OfferRemark[] = [];
  const top = eprAvsTop(offer.watts);
  if (offer.minVolts !== EPR_AVS.floor) remarks.push(say(`${offer.written} begins at ${short(offer.minVolts)} V; EPR AVS begins at 15 V.`));
  if (Math.abs(offer.maxVolts - top) > 0.05)
    remarks.push(say(`${offer.written} ends at ${short(offer.maxVolts)} V; with ${short(offer.watts)} W it ends at ${top} V.`));
  if (port.rated !== null && (offer.watts > port.rated.high + 1 || offer.watts < port.rated.low - 1)) {
    remarks.push(say(`${offer.written} names ${short(offer.watts)} W, and the port is stated at ${port.rated.written}.`));
  }
  return remarks;
}

/** SPR AVS carries the currents of the fixed 15 V and 20 V objects. */
function sprAvs(port: PortOffers, offer: Extract<JudgedOffer, { kind: 'SPR AVS' }>, at: number): readonly OfferRemark[] {
  const currents = [
    { volts: 15, amps: offer.ampsTo15V },
    { volts: 20, amps: offer.ampsTo20V },
  ];
  return currents.flatMap(({ volts, amps }): OfferRemark[] => {
    const fixed = fixedOffers(port.offers).find((candidate) => candidate.volts === volts);
    if (amps === null || fixed === undefined || Math.abs(fixed.amps - amps) <= FIXED_ROUNDING.amps + 1e-9) return [];
    const message = `${offer.written} carries ${short(amps)} A to ${volts} V, and fixed ${volts} V carries ${short(fixed.amps)} A: the two are the same current.`;
    return [{ rule: RULE, severity: 'warning', message, source: SPR_AVS.source, at }];
  });
}

/** Behind the fixed supplies of EPR comes exactly one AVS. */
function missingEpr(port: PortOffers): readonly OfferRemark[] {
  const high = fixedOffers(port.offers).find(({ volts }) => volts > 20);
  if (high === undefined || port.offers.some((offer) => offer.kind === 'EPR AVS')) return [];
  const severity = isMessage(port) ? 'warning' : 'note';
  return [
    {
      rule: RULE,
      severity,
      message: `Fixed ${short(high.volts)} V is offered without EPR AVS: an EPR source has exactly one.`,
      source: EPR_AVS.source,
      at: high.index,
    },
  ];
}

/** New in R3.2: its absence is only a breach where that revision is claimed, and only a list of words or of that revision shows it. */
function missingSpr(port: PortOffers): readonly OfferRemark[] {
  const rated = ratedWatts(port);
  if (rated === null || rated <= SPR_AVS.above || port.offers.some((offer) => offer.kind === 'SPR AVS')) return [];
  const isBound = claims(port.revision, JUDGED_REVISION);
  if (!isBound && (port.revision === null || !isMessage(port))) return [];
  const top = rated > SPR_AVS.to20Above ? 20 : 15;
  const older = isBound ? '' : `; PD ${port.revision ?? ''} did not have it`;
  const message = `No SPR AVS: R3.2 asks a ${short(rated)} W source for 9 to ${top} V${older}.`;
  return [{ rule: RULE, severity: isBound ? 'warning' : 'note', message, source: SPR_AVS.source, at: null }];
}
