import { VARIABLE_RANGE } from '../standards/usb-pd-message.ts';
import { variableRange as judge } from '../usb-pd/judgement/variable-range.ts';
import type { Check, Rule } from './check.ts';
import { offerFindings } from './port-offers.ts';

const RULE: Rule = {
  id: 'variable-range',
  title: 'A variable supply that varies too far',
  severity: 'warning',
  why: 'A variable supply is one voltage that wanders by a fifth at most; a wider range is a programmable one, or a slip in a word.',
  advice: 'Compare with the tester: a range that the device chooses from is PPS or AVS.',
  source: VARIABLE_RANGE.source,
};

export const variableRange: Check = { ...RULE, check: (input) => offerFindings(RULE, judge, input) };
