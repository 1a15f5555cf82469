import type { Finding } from '../diagnostics/finding.ts';
import type { Allocation } from '../entry/entry.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'same-set-twice',
  title: 'One set of ports has two rows',
  severity: 'error',
  why: 'The table has one row a set, so only one of the two can be shown.',
  advice: 'Keep one, or give both their order of plugging where that makes the difference.',
  source: {
    title: 'Power Systems Design, Intelligent power sharing for next-generation charger design (1 August 2023)',
    section: 'port limits depend on which ports are in use and on the order in which they were filled',
    standing: 'read',
  },
};

export const sameSetTwice: Check = { ...RULE, check };

function check({ entry }: CheckInput): Finding[] {
  const seen = new Map<string, Allocation[]>();
  return (entry.sharing?.allocations ?? []).flatMap((allocation) => {
    const others = seen.get(setOf(allocation)) ?? [];
    seen.set(setOf(allocation), [...others, allocation]);
    const earlier = others.find((other) => !toldApart(other, allocation));
    if (earlier === undefined) return [];
    const set = allocation.ports.join(' + ');
    const message = `${set} is given twice: ${sharesOf(earlier)} and ${sharesOf(allocation)}.`;
    return [findingOf(RULE, atValue(...allocation.path), { message, subject: set })];
  });
}

function setOf(allocation: Allocation): string {
  return [...new Set(allocation.ports)].sort().join('\n');
}

function toldApart(one: Allocation, other: Allocation): boolean {
  return one.order !== null && other.order !== null && one.order.join('\n') !== other.order.join('\n');
}

function sharesOf(allocation: Allocation): string {
  return allocation.shares.map((share) => share.power.written).join(' + ');
}
