import { avsOffers } from './judgement/avs-offers.ts';
import { cableOfOffers } from './judgement/cable-of-offers.ts';
import { eprBit } from './judgement/epr-bit.ts';
import { firstOffer } from './judgement/first-offer.ts';
import type { OfferRemark, OfferRule, PortOffers } from './judgement/judgement.ts';
import { offerCount } from './judgement/offer-count.ts';
import { offerFlags } from './judgement/offer-flags.ts';
import { offerOrder } from './judgement/offer-order.ts';
import { offersAgainstPower } from './judgement/offers-against-power.ts';
import { offerTwice } from './judgement/offer-twice.ts';
import { optionalOffers } from './judgement/optional-offers.ts';
import { plainOutputs } from './judgement/plain-outputs.ts';
import { ppsCurrents } from './judgement/pps-currents.ts';
import { ppsRanges } from './judgement/pps-ranges.ts';
import { ratedPowerSteps } from './judgement/rated-power-steps.ts';
import { requiredOffers } from './judgement/required-offers.ts';
import { variableRange } from './judgement/variable-range.ts';

const RULES: readonly OfferRule[] = [
  firstOffer,
  offerOrder,
  offerTwice,
  offerCount,
  requiredOffers,
  optionalOffers,
  ppsRanges,
  ppsCurrents,
  eprBit,
  avsOffers,
  variableRange,
  cableOfOffers,
  offersAgainstPower,
  ratedPowerSteps,
  offerFlags,
  plainOutputs,
];

/** Everything that the rules say of one port's offers, in the order of the rules. Judged by USB PD R3.2 V1.1, with older revisions minded. */
export function judgeOffers(port: PortOffers): readonly OfferRemark[] {
  return RULES.flatMap((rule) => rule(port));
}
