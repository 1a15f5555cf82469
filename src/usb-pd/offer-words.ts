import { nominalPpsVolts, offerWatts } from './offer-watts.ts';
import type { OfferBody } from './offer.ts';

function short(value: number): string {
  return String(Number(value.toPrecision(4)));
}

/** An offer in words, numbers first: "9 V 3 A, 27 W", "5–21 V 5 A, 100 W at 20 V". */
export function offerWords(offer: OfferBody): string {
  const watts = `${short(offerWatts(offer))} W`;
  switch (offer.kind) {
    case 'fixed':
    case 'plain':
      return `${short(offer.volts)} V ${short(offer.amps)} A, ${watts}`;
    case 'variable':
      return `${short(offer.minVolts)}–${short(offer.maxVolts)} V ${short(offer.amps)} A, to ${watts}`;
    case 'PPS': {
      const limited = offer.powerLimited === true ? ', power limited' : '';
      return `${short(offer.minVolts)}–${short(offer.maxVolts)} V ${short(offer.amps)} A, ${watts} at ${short(nominalPpsVolts(offer.maxVolts))} V${limited}`;
    }
    case 'battery':
    case 'EPR AVS':
      return `${short(offer.minVolts)}–${short(offer.maxVolts)} V, ${watts}`;
    case 'SPR AVS':
      return offer.ampsTo20V === null
        ? `9–15 V ${short(offer.ampsTo15V)} A, ${watts}`
        : `9–15 V ${short(offer.ampsTo15V)} A, to 20 V ${short(offer.ampsTo20V)} A, ${watts}`;
  }
}
