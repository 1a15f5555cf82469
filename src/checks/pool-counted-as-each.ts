import type { Finding } from '../diagnostics/finding.ts';
import { totalPower } from '../sharing/set-rows.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { poolThatFits } from './pool-that-fits.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'pool-counted-as-each',
  title: 'One pool is written as a share of each port',
  severity: 'error',
  why: 'Labels print "C2 + A: 15 W" for one pool that both ports draw on; counted for each port, the sum is above the total.',
  advice: 'Write the pool once: C1 + (C2 + A1): 45 W + 15 W.',
  source: {
    title: 'Label of a 65 W three-port charger, quoted in a public listing',
    section: '"C2+A: 15W Max", "C1+C2+A: 45W+15W"',
    standing: 'read',
  },
};

export const poolCountedAsEach: Check = { ...RULE, check };

function check({ entry, derived }: CheckInput): Finding[] {
  const total = totalPower(entry);
  if (total === null) return [];
  return (derived.shares?.rows ?? []).flatMap((row) => {
    const pool = row.standing === 'known' ? poolThatFits(row, total.high) : null;
    if (pool === null || row.path === null || row.sum === null) return [];
    const message = `${row.key} adds up to ${rounded(row.sum.nominal)} W, above the total of ${rounded(total.nominal)} W; it fits if ${pool.join(' and ')} draw on one pool.`;
    return [findingOf(RULE, atValue(...row.path), { message, subject: row.key })];
  });
}
