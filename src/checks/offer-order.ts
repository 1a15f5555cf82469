import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';
import { OBJECT_ORDER } from '../standards/usb-pd-message.ts';
import { offerOrder as judge } from '../usb-pd/judgement/offer-order.ts';

const RULE: Rule = {
  id: 'offer-order',
  title: 'Offers out of order',
  severity: 'warning',
  why: 'Devices walk through the list from the lowest voltage up; some refuse one in another order, most are then given less than they could have.',
  advice: 'Compare with the tester. In a text that only repeats the label, bring the offers into the order of the message.',
  source: OBJECT_ORDER.source,
};

export const offerOrder: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
