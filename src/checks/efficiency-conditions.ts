import { absentConditions } from '../derived/efficiency/absent-conditions.ts';
import type { Finding } from '../diagnostics/finding.ts';
import type { EfficiencyPoint } from '../entry/entry.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, commonPractice, findingOf } from './finding-of.ts';

const RULE: Rule = {
  id: 'efficiency-conditions',
  title: 'An efficiency without its conditions',
  severity: 'note',
  why: 'Line voltage, load and the place of measurement move an efficiency by several per cent; without them it is not compared with others.',
  advice: 'Add line, load (or output voltage and current) and place: board, connector or cable end.',
  source: commonPractice('conditions that published efficiency tables state'),
};

export const efficiencyConditions: Check = { ...RULE, check };

/** One note for all points that lack the same, at the first of them. */
function check({ entry }: CheckInput): Finding[] {
  const lacking = new Map<string, EfficiencyPoint[]>();
  for (const point of entry.efficiency.filter((candidate) => candidate.of === null && candidate.efficiency !== null)) {
    const absent = absentConditions(point, entry).join(' and ');
    if (absent !== '') lacking.set(absent, [...(lacking.get(absent) ?? []), point]);
  }
  return [...lacking].flatMap(([absent, [first, ...others]]) => {
    if (first === undefined) return [];
    const who = others.length === 0 ? 'This point does' : `This point and ${others.length} other${others.length === 1 ? '' : 's'} do`;
    return [findingOf(RULE, atKey(...first.path), { message: `${who} not say the ${absent}; not ranked.`, subject: 'efficiency' })];
  });
}
