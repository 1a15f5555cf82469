import { countBeyondBelief } from '../derived/fitted-parts.ts';
import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'part-count-plausible',
  title: 'A count of parts is beyond belief',
  severity: 'warning',
  why: 'A slipped digit would make a capacitance, a resistance or a loss ten times what it is, so nothing is computed from such a count.',
  advice: 'Count again; where there really are so many, divide them over several keys.',
  source: commonPractice('an adapter has no more than 64 pieces of one part side by side or in a row'),
};

export const partCountPlausible: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  return entry.parts.flatMap((part) => {
    const beyond = countBeyondBelief(part);
    const subject = part.references.join(', ');
    return beyond === null ? [] : [findingOf(RULE, atKey(...part.path), { message: `${beyond.reason}.`, subject })];
  });
}
