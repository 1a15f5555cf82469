import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';
import { OBJECT_COUNTS } from '../standards/usb-pd-message.ts';
import { offerCount as judge } from '../usb-pd/judgement/offer-count.ts';

const RULE: Rule = {
  id: 'offer-count',
  title: 'More offers than a message holds',
  severity: 'error',
  why: 'A message has room for seven objects to 20 V and four of EPR: no source can have sent more, so two lists have run together.',
  advice: 'Keep the objects of one message; read ports one at a time.',
  source: OBJECT_COUNTS.source,
};

export const offerCount: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
