import type { Finding } from '../diagnostics/finding.ts';
import { totalPower } from '../sharing/set-rows.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';
import { PRINTED_SLACK, rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'total-out-of-reach',
  title: 'No set of ports reaches the printed total',
  severity: 'warning',
  why: 'The total is a promise; if every set is known and none reaches it, the promise or a share is wrong.',
  advice: 'Compare the total and the largest shares with the print.',
  source: commonPractice('printed powers are taken with 1 % slack'),
};

export const totalOutOfReach: Check = { ...RULE, check };

function check({ entry, derived }: CheckInput): Finding[] {
  const total = totalPower(entry);
  const fact = entry.sharing?.total ?? entry.nameplate.total;
  const matrix = derived.shares;
  if (total === null || fact === null || matrix === null || matrix.counts.missing > 0) return [];
  const sums = matrix.rows.flatMap((row) => row.sum?.high ?? []);
  const most = Math.max(0, ...sums);
  if (most >= total.low * (1 - PRINTED_SLACK)) return [];
  const message = `The total is ${fact.quantity.written}, and the largest sum of any set of ports is ${rounded(most)} W.`;
  return [findingOf(RULE, atValue(...fact.path), { message, subject: 'total' })];
}
