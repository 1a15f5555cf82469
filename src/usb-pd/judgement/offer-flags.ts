import { FIRST_OBJECT_FLAGS } from '../../standards/usb-pd-message.ts';
import { decodeObject } from '../power-data-object.ts';
import type { PowerDataObject } from '../power-data-object.ts';
import { listed } from './claims.ts';
import type { OfferRemark, PortOffers } from './judgement.ts';

const FLAGS = {
  dualRolePower: 'dual-role power (29)',
  usbSuspend: 'USB suspend (28)',
  unconstrained: 'unconstrained power (27)',
  usbComm: 'USB communications (26)',
  dualRoleData: 'dual-role data (25)',
  unchunked: 'unchunked messages (24)',
  eprCapable: 'EPR capable (23)',
} as const;

/** Flags belong to the first object; bits without a meaning are zero. Sinks ignore both, so this is a note. */
export function offerFlags(port: PortOffers): readonly OfferRemark[] {
  const words = port.offers.map((offer) => (offer.word === null ? null : decodeObject(offer.word)));
  const later = words.flatMap((object, index) => (index > 0 && object?.kind === 'fixed' ? [{ object, index }] : []));
  const set = (Object.keys(FLAGS) as (keyof typeof FLAGS)[]).filter((flag) => later.some(({ object }) => object[flag] === 1));
  const at = later.find(({ object }) => set.some((flag) => object[flag] === 1))?.index;
  const remarks: OfferRemark[] = [];
  if (at !== undefined) {
    const message = `Flags stand in objects behind the first: ${listed(set.map((flag) => FLAGS[flag]))}; they belong to the 5 V object, and sinks ignore the others.`;
    remarks.push({ rule: 'offer-flags', severity: 'note', message, source: FIRST_OBJECT_FLAGS.source, at });
  }
  const reserved = words.findIndex((object) => object !== null && hasReservedBits(object));
  if (reserved !== -1) {
    const message = `${port.offers[reserved]?.written ?? ''} has a bit set that USB PD reserves.`;
    remarks.push({ rule: 'offer-flags', severity: 'note', message, source: FIRST_OBJECT_FLAGS.source, at: reserved });
  }
  return remarks;
}

function hasReservedBits(object: PowerDataObject): boolean {
  return Object.entries(object).some(([name, value]) => name.startsWith('reserved') && value !== 0);
}
