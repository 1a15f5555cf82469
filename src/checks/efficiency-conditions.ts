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

function check({ entry }: CheckInput): Finding[] {
  const ofDevice = entry.efficiency.filter((point) => point.of === null && point.efficiency !== null);
  return ofDevice.flatMap((point) => {
    const absent = absentConditions(point, entry.nameplate.input?.kind === 'AC');
    if (absent.length === 0) return [];
    return [findingOf(RULE, atKey(...point.path), { message: `This point does not say its ${absent.join(', ')}, so it is not ranked.` })];
  });
}

function absentConditions(point: EfficiencyPoint, fromMains: boolean): string[] {
  const absent: string[] = [];
  if (fromMains && point.line === null) absent.push('line voltage');
  if (point.statistic === 'point' && point.load === null && point.current === null) absent.push('load');
  if (point.place === null) absent.push('place of measurement');
  return absent;
}
