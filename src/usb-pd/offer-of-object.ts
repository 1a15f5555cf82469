import type { OfferBody } from './offer.ts';
import type { PowerDataObject } from './power-data-object.ts';

/** What an object offers, in volts, amperes and watts; null for filler and reserved kinds. */
export function offerOfObject(object: PowerDataObject): OfferBody | null {
  switch (object.kind) {
    case 'fixed':
      return { kind: 'fixed', volts: object.voltage_mV / 1000, amps: object.current_mA / 1000 };
    case 'battery':
      return { kind: 'battery', minVolts: object.min_mV / 1000, maxVolts: object.max_mV / 1000, watts: object.power_mW / 1000 };
    case 'variable':
      return { kind: 'variable', minVolts: object.min_mV / 1000, maxVolts: object.max_mV / 1000, amps: object.current_mA / 1000 };
    case 'pps':
      return {
        kind: 'PPS',
        minVolts: object.min_mV / 1000,
        maxVolts: object.max_mV / 1000,
        amps: object.current_mA / 1000,
        powerLimited: object.powerLimited === 1,
      };
    case 'eprAvs':
      return { kind: 'EPR AVS', minVolts: object.min_mV / 1000, maxVolts: object.max_mV / 1000, watts: object.pdp_W };
    case 'sprAvs':
      return {
        kind: 'SPR AVS',
        ampsTo15V: object.current15V_mA / 1000,
        ampsTo20V: object.current20V_mA === 0 ? null : object.current20V_mA / 1000,
      };
    case 'reserved':
    case 'empty':
      return null;
  }
}

const NO_FLAGS = {
  peak: 0,
  reserved22: 0,
  eprCapable: 0,
  unchunked: 0,
  dualRoleData: 0,
  usbComm: 0,
  unconstrained: 0,
  usbSuspend: 0,
  dualRolePower: 0,
} as const;

function milli(value: number): number {
  return Math.round(value * 1000);
}

/** The object that carries an offer, every flag that text does not tell being 0; null for a plain output, which sends none. */
export function objectOfOffer(offer: OfferBody): PowerDataObject | null {
  switch (offer.kind) {
    case 'fixed':
      return { kind: 'fixed', voltage_mV: milli(offer.volts), current_mA: milli(offer.amps), ...NO_FLAGS };
    case 'battery':
      return { kind: 'battery', max_mV: milli(offer.maxVolts), min_mV: milli(offer.minVolts), power_mW: milli(offer.watts) };
    case 'variable':
      return { kind: 'variable', max_mV: milli(offer.maxVolts), min_mV: milli(offer.minVolts), current_mA: milli(offer.amps) };
    case 'PPS':
      return {
        kind: 'pps',
        powerLimited: offer.powerLimited === true ? 1 : 0,
        reserved26_25: 0,
        max_mV: milli(offer.maxVolts),
        reserved16: 0,
        min_mV: milli(offer.minVolts),
        reserved7: 0,
        current_mA: milli(offer.amps),
      };
    case 'EPR AVS':
      return { kind: 'eprAvs', peak: 0, max_mV: milli(offer.maxVolts), reserved16: 0, min_mV: milli(offer.minVolts), pdp_W: offer.watts };
    case 'SPR AVS':
      return {
        kind: 'sprAvs',
        peak: 0,
        reserved25_20: 0,
        current15V_mA: milli(offer.ampsTo15V),
        current20V_mA: milli(offer.ampsTo20V ?? 0),
      };
    case 'plain':
      return null;
  }
}
