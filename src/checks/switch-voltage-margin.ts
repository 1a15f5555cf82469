import type { Check, Rule } from './check.ts';
import { commonPractice } from './finding-of.ts';
import { marginFindings } from './stress-findings.ts';

const RULE: Rule = {
  id: 'switch-voltage-margin',
  title: 'A switch has little voltage or current to spare',
  severity: 'warning',
  why: 'Leakage spikes and surges come on top of the computed stress.',
  advice: 'Read the rating again, or give the measured stress; where it is right, answer the finding.',
  source: commonPractice('the limit is that of the derating policy named in the finding'),
};

export const switchVoltageMargin: Check = { ...RULE, check: (input) => marginFindings(RULE, input, ['transistor']) };
