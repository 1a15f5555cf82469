import type { Check, Rule } from './check.ts';
import { commonPractice } from './finding-of.ts';
import { marginFindings } from './stress-findings.ts';

const RULE: Rule = {
  id: 'capacitor-voltage-margin',
  title: 'A capacitor has little voltage to spare',
  severity: 'warning',
  why: 'Mains surges, tolerance and age take the spare voltage; electrolytics near their rating live short.',
  advice: 'Read the rating again; where it is right, it is a result of the review: answer the finding with what was seen.',
  source: commonPractice('the limit is that of the derating policy named in the finding'),
};

export const capacitorVoltageMargin: Check = {
  ...RULE,
  check: (input) =>
    marginFindings(RULE, input, [
      'safety capacitor',
      'film capacitor',
      'ceramic capacitor',
      'aluminium electrolytic',
      'polymer capacitor',
      'capacitor',
    ]),
};
