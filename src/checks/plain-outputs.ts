import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';
import { TYPE_C_CURRENTS } from '../standards/usb-output-limits.ts';
import { plainOutputs as judge } from '../usb-pd/judgement/plain-outputs.ts';

const RULE: Rule = {
  id: 'plain-outputs',
  title: 'An output without USB PD that is not possible so',
  severity: 'warning',
  why: 'Without negotiation a Type-C port has 5 V and one of a few currents, and BC 1.2 ends at 1.5 A; another voltage needs USB PD or a maker’s own protocol.',
  advice: 'Name the protocol under protocols, or write the offer as a USB PD one.',
  source: TYPE_C_CURRENTS.source,
};

export const plainOutputs: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
