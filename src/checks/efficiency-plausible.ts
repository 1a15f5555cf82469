import type { Finding } from '../diagnostics/finding.ts';
import type { EfficiencyPoint } from '../entry/entry.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'efficiency-plausible',
  title: 'An efficiency is higher than a whole adapter reaches',
  severity: 'error',
  why: 'Mains adapters state 91 to 94.5 %; figures of 98 % and more belong to one stage.',
  advice: 'Say of which stage it is (of: pfc), or correct the input and output readings.',
  source: {
    title: 'Published adapter reports: 93 / 94 / 94.5 % at 90 / 115 / 230 V; 99.5 % quoted for a second stage alone',
    section: 'the limit of 97 % is common practice',
    standing: 'read',
  },
};

export const efficiencyPlausible: Check = { ...RULE, check };

const MOST_FROM_MAINS = 0.97;

function check({ entry }: CheckInput): Finding[] {
  const fromMains = entry.nameplate.input?.kind === 'AC';
  const most = fromMains ? MOST_FROM_MAINS : 1;
  return entry.efficiency.flatMap((point) => {
    const known = point.of === null ? efficiencyOf(point) : null;
    if (known === null || known.ratio <= most) return [];
    const limit = known.ratio > 1 ? 'more comes out than goes in.' : 'above 97 % from plug to port. Is it the efficiency of one stage?';
    return [findingOf(RULE, atKey(...point.path), { message: `${known.words}: ${limit}` })];
  });
}

function efficiencyOf(point: EfficiencyPoint): { readonly ratio: number; readonly words: string } | null {
  if (point.efficiency !== null)
    return { ratio: point.efficiency.quantity.nominal, words: `Efficiency ${point.efficiency.quantity.written}` };
  const output = point.measuredOutput ?? point.output;
  if (point.input === null || output === null || point.current === null || !(point.input.quantity.nominal > 0)) return null;
  const ratio = (output.quantity.nominal * point.current.quantity.nominal) / point.input.quantity.nominal;
  const words = `${output.quantity.written} × ${point.current.quantity.written} of ${point.input.quantity.written} is an efficiency of ${rounded(ratio * 100)} %`;
  return { ratio, words };
}
