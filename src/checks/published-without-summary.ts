import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'published-without-summary',
  title: 'A published teardown has no summary',
  severity: 'warning',
  why: 'The home page, lists and feeds show one or two sentences of each teardown; this one shows its title only.',
  advice: 'Add `summary:` with what a reader should take away.',
  source: commonPractice('what lists show'),
};

export const publishedWithoutSummary: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  if (entry.status !== 'published' || (entry.summary ?? '').trim() !== '') return [];
  return [findingOf(RULE, atKey('status'), { message: 'The teardown is published and has no summary.', subject: 'summary' })];
}
