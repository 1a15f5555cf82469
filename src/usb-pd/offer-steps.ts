import type { OfferBody } from './offer.ts';

/** Steps in which an object carries its volts and amperes. USB PD R3.2 V1.1, 6.4.1.2 and 6.4.1.3. */
interface Step {
  readonly value: number;
  readonly step: number;
  readonly unit: string;
}

function stepsOf(offer: OfferBody): readonly Step[] {
  switch (offer.kind) {
    case 'fixed':
      return [volts(offer.volts, 0.05), amps(offer.amps, 0.01)];
    case 'variable':
      return [volts(offer.minVolts, 0.05), volts(offer.maxVolts, 0.05), amps(offer.amps, 0.01)];
    case 'battery':
      return [volts(offer.minVolts, 0.05), volts(offer.maxVolts, 0.05), { value: offer.watts, step: 0.25, unit: 'W' }];
    case 'PPS':
      return [volts(offer.minVolts, 0.1), volts(offer.maxVolts, 0.1), amps(offer.amps, 0.05)];
    case 'EPR AVS':
      return [volts(offer.minVolts, 0.1), volts(offer.maxVolts, 0.1), { value: offer.watts, step: 1, unit: 'W' }];
    case 'SPR AVS':
      return [amps(offer.ampsTo15V, 0.01), amps(offer.ampsTo20V ?? 0, 0.01)];
    case 'plain':
      return [];
  }
}

function volts(value: number, step: number): Step {
  return { value, step, unit: 'V' };
}

function amps(value: number, step: number): Step {
  return { value, step, unit: 'A' };
}

/** "3.33 A is not a multiple of 0.05 A, the step of a PPS object", or null where the object can carry the offer. */
export function offStep(offer: OfferBody): string | null {
  for (const { value, step, unit } of stepsOf(offer)) {
    const steps = value / step;
    if (Math.abs(steps - Math.round(steps)) < 1e-6) continue;
    return `${value} ${unit} is not a multiple of ${step} ${unit}, the step of ${offer.kind === 'EPR AVS' || offer.kind === 'SPR AVS' ? 'an' : 'a'} ${offer.kind} object`;
  }
  return null;
}
