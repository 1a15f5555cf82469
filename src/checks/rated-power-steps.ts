import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';
import { RATED_POWER_STEPS } from '../standards/usb-pd-message.ts';
import { ratedPowerSteps as judge } from '../usb-pd/judgement/rated-power-steps.ts';

const RULE: Rule = {
  id: 'rated-power-steps',
  title: 'A power that USB PD does not declare',
  severity: 'note',
  why: 'USB PD declares whole watts from 10 W on and half watts below: a power between belongs to another protocol, or to a sum of ports.',
  advice: 'Say to which protocol the number belongs.',
  source: RATED_POWER_STEPS.source,
};

export const ratedPowerSteps: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
