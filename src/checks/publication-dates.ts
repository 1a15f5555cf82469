import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'publication-dates',
  title: 'A correction is older than the publication',
  severity: 'warning',
  why: 'The revision letter counts corrections after publication; a mistake corrected before it needs no entry.',
  advice: 'Compare the two dates.',
  source: commonPractice('order of dates'),
};

export const publicationDates: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  return entry.corrections.flatMap((correction, index) => {
    if (entry.published === null || correction.date >= entry.published) return [];
    const message = `A correction of ${correction.date} is older than the publication of ${entry.published}.`;
    return [findingOf(RULE, atValue('corrections', index, 'date'), { message, subject: 'corrections' })];
  });
}
