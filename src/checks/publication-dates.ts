import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, atValue, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'publication-dates',
  title: 'The dates of publication and correction do not fit',
  severity: 'error',
  why: 'Lists and feeds are sorted by the date of publication, and a revision letter counts corrections after it.',
  advice: 'Give `published: 2026-03-14` for a published teardown, and date corrections on or after that day.',
  source: commonPractice('order of dates'),
};

export const publicationDates: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  if (entry.status === 'published' && entry.published === null) {
    return [
      findingOf(RULE, atKey('status'), { message: 'The teardown is published and has no date of publication.', subject: 'published' }),
    ];
  }
  return entry.corrections.flatMap((correction, index) => {
    if (entry.published === null || correction.date >= entry.published) return [];
    const message = `A correction of ${correction.date} is older than the publication of ${entry.published}.`;
    return [findingOf(RULE, atValue('corrections', index, 'date'), { message, severity: 'warning', subject: 'corrections' })];
  });
}
