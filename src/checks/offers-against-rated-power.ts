import { offersAgainstPower, ROUNDED_LABELS } from '../usb-pd/judgement/offers-against-power.ts';
import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';

const RULE: Rule = {
  id: 'offers-against-rated-power',
  title: 'A port’s offers and its stated power do not meet',
  severity: 'warning',
  why: 'An offer above the stated power, or a stated power that no offer delivers, is a slip or a label that promises too much.',
  advice: 'Compare the offer and the power with what the tester shows.',
  source: ROUNDED_LABELS,
};

export const offersAgainstRatedPower: Check = { ...RULE, check: (input) => offerFindings(RULE, offersAgainstPower, input) };
