import type { Allocation, Entry, Share } from '../entry/entry.ts';
import type { Finding } from '../diagnostics/finding.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';
import { PRINTED_SLACK, rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'port-above-own-limit',
  title: 'A share is above what its port can give',
  severity: 'error',
  why: 'A port cannot give more in company than its own limit; one of the two numbers belongs to another port.',
  advice: 'Compare both with the print; limits are easily copied to the neighbour.',
  source: commonPractice('definition of the limit; printed powers are taken with 1 % slack'),
};

export const portAboveOwnLimit: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  return (entry.sharing?.allocations ?? []).flatMap((allocation) =>
    allocation.shares.flatMap((share) => findingsOf(share, allocation, entry)),
  );
}

function findingsOf(share: Share, allocation: Allocation, entry: Entry): Finding[] {
  const limits = share.ports.flatMap((id) => entry.ports.find((port) => port.id === id)?.power ?? []);
  if (limits.length !== share.ports.length) return [];
  const most = limits.reduce((sum, limit) => sum + (limit.quantity.high ?? limit.quantity.nominal), 0);
  if ((share.power.low ?? share.power.nominal) <= most * (1 + PRINTED_SLACK)) return [];
  const measured = allocation.evidence === 'measured' || limits.some((limit) => limit.evidence !== 'printed');
  const names = share.ports.join(' and ');
  const stated = limits.length === 1 ? (limits[0]?.quantity.written ?? '') : `${rounded(most)} W together`;
  return [
    findingOf(RULE, atValue(...allocation.path), {
      message: `${names} ${share.ports.length === 1 ? 'gets' : 'get'} ${share.power.written} with ${allocation.ports.join(' + ')} in use, above the limit of ${stated}.`,
      severity: measured ? 'warning' : 'error',
      subject: share.ports.join(', '),
    }),
  ];
}
