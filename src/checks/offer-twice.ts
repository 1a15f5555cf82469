import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';
import { NO_TWINS } from '../standards/usb-pd-message.ts';
import { offerTwice as judge } from '../usb-pd/judgement/offer-twice.ts';

const RULE: Rule = {
  id: 'offer-twice',
  title: 'Two offers of one voltage',
  severity: 'warning',
  why: 'No two objects of a kind may say the same voltage; a list with twins was mostly pasted twice, and a source that sends one is refused by some devices.',
  advice: 'Compare with the tester and remove the copy.',
  source: NO_TWINS.source,
};

export const offerTwice: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
