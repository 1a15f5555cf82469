import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';
import { EPR_CAPABLE_BIT } from '../standards/usb-pd-message.ts';
import { eprBit as judge } from '../usb-pd/judgement/epr-bit.ts';

const RULE: Rule = {
  id: 'epr-bit',
  title: 'The EPR capable bit and the offers differ',
  severity: 'warning',
  why: 'A device asks for more than 20 V only where bit 23 of the first object says that the source has it.',
  advice: 'Compare the first word with the tester, and the rated power with the print.',
  source: EPR_CAPABLE_BIT.source,
};

export const eprBit: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
