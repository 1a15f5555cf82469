import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';
import { OBJECT_ORDER } from '../standards/usb-pd-message.ts';
import { firstOffer as judge } from '../usb-pd/judgement/first-offer.ts';

const RULE: Rule = {
  id: 'first-offer',
  title: 'A USB PD list that does not begin with 5 V',
  severity: 'error',
  why: 'Every source begins with a fixed supply of 5 V, and devices refuse a list that does not: either the list is not whole or the source does not work with them.',
  advice: 'Compare with the tester; paste the whole message, first object first.',
  source: OBJECT_ORDER.source,
};

export const firstOffer: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
