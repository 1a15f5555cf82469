import { OPTIONAL_VOLTS, requiredSupplies } from '../../standards/usb-pd-fixed-supplies.ts';
import { claims, fixedOffers, JUDGED_REVISION, listed, negotiates, ratedWatts, short } from './claims.ts';
import type { OfferRemark, PortOffers } from './judgement.ts';

/** Fixed voltages that the table does not ask for: R3.2 ends them at 9 V and gives sources above 100 W none; older editions allowed them. */
export function optionalOffers(port: PortOffers): readonly OfferRemark[] {
  const rated = ratedWatts(port);
  if (rated === null || !negotiates(port)) return [];
  const required = new Set(requiredSupplies(rated).map(({ volts }) => volts));
  const extra = fixedOffers(port.offers).filter(({ volts }) => !required.has(volts) && (volts > OPTIONAL_VOLTS.most || rated > 100));
  const [first] = extra;
  if (first === undefined) return [];
  const isBound = claims(port.revision, JUDGED_REVISION);
  const volts = listed(extra.map((offer) => `${short(offer.volts)} V`));
  const verb = extra.length === 1 ? 'is no voltage' : 'are no voltages';
  const limit = rated > 100 ? 'gives sources above 100 W no optional voltages' : `ends optional voltages at ${OPTIONAL_VOLTS.most} V`;
  const older = isBound ? '' : '; older revisions allowed it';
  const message = `${volts} ${verb} of a ${short(rated)} W source: R3.2 ${limit}${older}.`;
  return [{ rule: 'optional-offers', severity: isBound ? 'warning' : 'note', message, source: OPTIONAL_VOLTS.source, at: first.index }];
}
