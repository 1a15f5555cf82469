import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';
import { OPTIONAL_VOLTS } from '../standards/usb-pd-fixed-supplies.ts';
import { optionalOffers as judge } from '../usb-pd/judgement/optional-offers.ts';

const RULE: Rule = {
  id: 'optional-offers',
  title: 'A voltage that the newest edition does not have',
  severity: 'warning',
  why: 'Optional fixed voltages end at 9 V now, and sources above 100 W have none. Older editions allowed 12 V and others; such a source is not wrong, and devices cannot count on it.',
  advice: 'State the revision that the source claims; nothing else need be done for an older one.',
  source: OPTIONAL_VOLTS.source,
};

export const optionalOffers: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
