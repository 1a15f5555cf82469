import type { Check, Rule } from './check.ts';
import { commonPractice } from './finding-of.ts';
import { marginFindings } from './stress-findings.ts';

const RULE: Rule = {
  id: 'rectifier-voltage-margin',
  title: 'A rectifier has little voltage or current to spare',
  severity: 'warning',
  why: 'Surges and ringing come on top of the computed reverse voltage.',
  advice: 'Read the rating again, or give the measured stress; where it is right, answer the finding.',
  source: commonPractice('the limit is that of the derating policy named in the finding'),
};

export const rectifierVoltageMargin: Check = { ...RULE, check: (input) => marginFindings(RULE, input, ['rectifier']) };
