import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';
import { FIXED_SUPPLIES } from '../standards/usb-pd-fixed-supplies.ts';
import { requiredOffers as judge } from '../usb-pd/judgement/required-offers.ts';

const RULE: Rule = {
  id: 'required-offers',
  title: 'A voltage that the rated power asks for is missing',
  severity: 'warning',
  why: 'The rated power of a USB PD source decides its fixed voltages and their currents, so that any device of that power runs on it; one that is missing leaves devices at a lower voltage.',
  advice: 'Compare with the tester, read through a cable that bears the power. If the source is so, say it in the text.',
  source: FIXED_SUPPLIES.source,
};

export const requiredOffers: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
