import type { Port } from '../entry/entry.ts';
import { electricPower } from '../formulas/energy/electric-power.ts';
import { nominalPpsVolts } from '../usb-pd/offer-watts.ts';
import type { Offer } from '../usb-pd/offer.ts';
import type { Dimension } from '../units/dimension.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { writtenOrigin } from '../values/from-quantity.ts';
import { missing } from '../values/missing.ts';
import { isMissing, type Known, type Value } from '../values/value.ts';

/** Offers are written in steps of the protocol (10 mA, 50 mV and coarser), so three digits hold them. */
const OFFER_DIGITS = 3;

/** Highest voltage that a port offers. */
export function offeredVoltage(port: Port): Known<'voltage'> {
  const voltages = port.offers.map((offer) => offerValue('voltage', highestVolts(offer), offer, port));
  return largest(voltages) ?? missing(`no offer of ${port.id} known`, [`offers of ${port.id}`]);
}

/** Power of the strongest offer of a port. Adjustable ranges count only where there is no fixed offer, PPS at its nominal voltage. */
export function offeredPower(port: Port): Known<'power'> {
  const contracts = port.offers.flatMap((offer) => contractPower(offer, port));
  const adjustable = port.offers.flatMap((offer) => adjustablePower(offer, port));
  const found = largest(contracts) ?? largest(adjustable);
  return found ?? missing(`neither a limit nor an offer of ${port.id} is known`, [`power of ${port.id}`]);
}

/** Highest volts of an offer. */
function highestVolts(offer: Offer): number {
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return offer.volts;
    case 'SPR AVS':
      return offer.ampsTo20V === null ? 15 : 20;
    case 'variable':
    case 'battery':
    case 'PPS':
    case 'EPR AVS':
      return offer.maxVolts;
  }
}

function contractPower(offer: Offer, port: Port): readonly Known<'power'>[] {
  if (offer.kind === 'fixed' || offer.kind === 'plain') return [product(offer, port, offer.volts, offer.amps)];
  if (offer.kind === 'variable') return [product(offer, port, offer.maxVolts, offer.amps)];
  if (offer.kind === 'battery' || offer.kind === 'EPR AVS') return [offerValue('power', offer.watts, offer, port)];
  return [];
}

function adjustablePower(offer: Offer, port: Port): readonly Known<'power'>[] {
  if (offer.kind === 'PPS') return [product(offer, port, nominalPpsVolts(offer.maxVolts), offer.amps)];
  if (offer.kind !== 'SPR AVS') return [];
  return offer.ampsTo20V === null ? [product(offer, port, 15, offer.ampsTo15V)] : [product(offer, port, 20, offer.ampsTo20V)];
}

function product(offer: Offer, port: Port, volts: number, amps: number): Known<'power'> {
  return applyFormula(electricPower, {
    voltage: offerValue('voltage', volts, offer, port),
    current: offerValue('current', amps, offer, port),
  });
}

/** A number of an offer, with the offer as its origin. */
export function offerValue<D extends Dimension>(dimension: D, number: number, offer: Offer, port: Port): Known<D> {
  const at = offer.path.join('.');
  if (!Number.isFinite(number)) return missing(`the offer "${offer.written}" has no finite number`, [at]);
  return {
    dimension,
    low: number,
    nominal: number,
    high: number,
    significant: OFFER_DIGITS,
    origin: writtenOrigin(port.evidence, offer.written, at),
  };
}

/** The largest of several values by its nominal number; null where none is known. */
export function largest<D extends Dimension>(several: readonly Known<D>[]): Value<D> | null {
  return several.reduce<Value<D> | null>(
    (best, known) => (isMissing(known) || (best !== null && best.nominal >= known.nominal) ? best : known),
    null,
  );
}
