import type { Check, Rule } from './check.ts';
import { commonPractice } from './finding-of.ts';
import { marginFindings } from './stress-findings.ts';

const RULE: Rule = {
  id: 'protection-margin',
  title: 'A protection part is run close to its rating',
  severity: 'warning',
  why: 'A fuse near its rated current ages and opens for no fault; one below the supply voltage may not clear.',
  advice: 'Read the marking again; where it is right, answer the finding.',
  source: commonPractice('the limit is that of the derating policy named in the finding'),
};

export const protectionMargin: Check = { ...RULE, check: (input) => marginFindings(RULE, input, ['fuse', 'varistor', 'thermistor']) };
