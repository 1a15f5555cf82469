import { nominalPpsVolts } from './offer-watts.ts';
import type { OfferBody } from './offer.ts';

/** Requests to an adjustable supply are made in 50 mA. USB PD R3.2 V1.1, 6.4.2.8. */
const REQUEST_STEP = 0.05;

/** EPR AVS never gives more, however low the voltage. USB PD R3.2 V1.1, Table 10.12. */
export const EPR_AVS_AMPS = 5;

/**
 * Amperes that a device gets from one offer when it asks for this voltage; null where the offer does not have it. The voltage of a
 * variable or battery supply is not for the device to choose, so these answer null. A power-limited PPS supply is taken at its nominal
 * watts where volts × amperes would be more: it need not give more than that.
 */
export function currentAt(offer: OfferBody, volts: number): number | null {
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return Math.abs(offer.volts - volts) < 0.025 ? offer.amps : null;
    case 'PPS':
      if (!isWithin(volts, offer.minVolts, offer.maxVolts)) return null;
      return offer.powerLimited === true
        ? Math.min(offer.amps, stepsDown((nominalPpsVolts(offer.maxVolts) * offer.amps) / volts))
        : offer.amps;
    case 'EPR AVS':
      return isWithin(volts, offer.minVolts, offer.maxVolts) ? Math.min(EPR_AVS_AMPS, stepsDown(offer.watts / volts)) : null;
    case 'SPR AVS':
      if (isWithin(volts, 9, 15)) return offer.ampsTo15V;
      return isWithin(volts, 15, 20) ? offer.ampsTo20V : null;
    case 'variable':
    case 'battery':
      return null;
  }
}

function isWithin(volts: number, low: number, high: number): boolean {
  return volts >= low - 1e-9 && volts <= high + 1e-9;
}

function stepsDown(amps: number): number {
  return Number((Math.floor(amps / REQUEST_STEP + 1e-9) * REQUEST_STEP).toPrecision(12));
}
