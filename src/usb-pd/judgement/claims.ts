import { FIXED_ROUNDING } from '../../standards/usb-pd-fixed-supplies.ts';
import { offerWatts } from '../offer-watts.ts';
import type { JudgedOffer, PortOffers } from './judgement.ts';

/** Whether a revision is this one or a later: "3.2" and "3.2 V1.1" claim 3.2. False where none is claimed. */
export function claims(revision: string | null, wanted: number): boolean {
  const number = revision === null ? null : /\d+(?:\.\d+)?/.exec(revision)?.[0];
  return number !== undefined && number !== null && Number(number) >= wanted - 1e-9;
}

/** The edition by which offers are judged; a source that claims an earlier one is told what has changed, as a note. */
export const JUDGED_REVISION = 3.2;

/** Whether a port negotiates over USB PD: its offers are words, it claims a revision, or its Type-C list holds more than one voltage. */
export function negotiates(port: PortOffers): boolean {
  const offers = port.offers.filter((offer) => offer.kind !== 'plain');
  if (offers.length === 0) return false;
  if (offers.some((offer) => offer.word !== null) || port.revision !== null) return true;
  return (port.connector === 'USB-C' || port.connector === 'captive cable') && (offers.length > 1 || offers[0]?.kind !== 'fixed');
}

/** Whether all offers are words of one message, so that their order and flags are the source's own and not a label's. */
export function isMessage(port: PortOffers): boolean {
  return port.offers.length > 0 && port.offers.every((offer) => offer.word !== null);
}

/** Watts by which to judge: what is stated, or what the offers reach, brought to the whole watt where that is within 1 %. */
export function ratedWatts(port: PortOffers): number | null {
  if (port.rated !== null) return port.rated.low;
  const watts = Math.max(0, ...port.offers.map((offer) => offerWatts(offer)));
  if (watts === 0) return null;
  const whole = Math.round(watts);
  return Math.abs(whole - watts) <= Math.max(0.01 * watts, FIXED_ROUNDING.amps * 5) ? whole : watts;
}

/** Watts that can be expected in a list that was read through this cable: one without a mark lets a source show 60 W. */
export function visibleWatts(port: PortOffers, watts: number): number {
  return port.cable === 'unmarked cable' ? Math.min(watts, 60) : port.cable === 'marked cable' ? Math.min(watts, 100) : watts;
}

/** A fixed supply with its place in the list. */
export interface PlacedFixed {
  readonly volts: number;
  readonly amps: number;
  readonly index: number;
}

export function fixedOffers(offers: readonly JudgedOffer[]): readonly PlacedFixed[] {
  return offers.flatMap((offer, index) => (offer.kind === 'fixed' ? [{ volts: offer.volts, amps: offer.amps, index }] : []));
}

/** A number as one writes it: 2.22, 3, 20. */
export function short(value: number): string {
  return String(Number(value.toPrecision(4)));
}

/** "9 V", "9 V and 15 V", "9 V, 15 V and 20 V". */
export function listed(items: readonly string[]): string {
  return items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items.at(-1) ?? ''}`;
}
