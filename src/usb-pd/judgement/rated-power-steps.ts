import { RATED_POWER_STEPS } from '../../standards/usb-pd-message.ts';
import { negotiates, short } from './claims.ts';
import type { OfferRemark, PortOffers } from './judgement.ts';

/** A USB PD source declares its power in whole watts from 10 W on and in half watts below: "22.5 W" is another protocol's number. */
export function ratedPowerSteps(port: PortOffers): readonly OfferRemark[] {
  if (port.rated === null || port.rated.low !== port.rated.high || !negotiates(port)) return [];
  const watts = port.rated.low;
  const step = watts >= RATED_POWER_STEPS.wholeFrom ? 1 : RATED_POWER_STEPS.below;
  if (Math.abs(watts / step - Math.round(watts / step)) < 1e-6) return [];
  const message = `${short(watts)} W is no power that USB PD declares: it has ${step === 1 ? 'whole watts from 10 W on' : 'half watts below 10 W'}; a maker’s own protocol may.`;
  return [{ rule: 'rated-power-steps', severity: 'note', message, source: RATED_POWER_STEPS.source, at: 'power' }];
}
