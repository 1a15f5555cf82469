import { factValue } from '../derived/fact-value.ts';
import { logEfficiency } from '../derived/log-efficiency.ts';
import type { Finding } from '../diagnostics/finding.ts';
import type { EfficiencyPoint } from '../entry/entry.ts';
import { isMissing, type Known, type Value } from '../values/value.ts';
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

function check({ entry, derived }: CheckInput): Finding[] {
  const most = entry.nameplate.input?.kind === 'AC' ? MOST_FROM_MAINS : 1;
  const points = entry.efficiency.flatMap((point) => {
    const known = point.of === null ? efficiencyOf(point, derived) : null;
    return known === null || isMissing(known) ? [] : judged({ known, words: wordsOf(point, known), where: atKey(...point.path) }, most);
  });
  const logs = derived.logs.flatMap((log) => {
    const known = logEfficiency(log);
    if (known === null || isMissing(known)) return [];
    const words = `Mean power out of mean power in of the log ${log.id} is an efficiency of ${rounded(known.nominal * 100)} %`;
    return judged({ known, words, where: atKey(...log.path) }, most);
  });
  return [...points, ...logs];
}

interface Told {
  readonly known: Value<'ratio'>;
  readonly words: string;
  readonly where: Finding['where'];
}

/** Above the limit with all that the instruments leave open it cannot be; where the limit lies inside, it may be right. */
function judged({ known, words, where }: Told, most: number): Finding[] {
  const { low, nominal, high } = known;
  if (nominal <= most) return [];
  const limit = nominal > 1 ? 'more comes out than goes in.' : 'above 97 % from plug to port. Is it the efficiency of one stage?';
  if (low > most) return [findingOf(RULE, where, { message: `${words}: ${limit}` })];
  const open = `${rounded(low * 100)} to ${rounded(high * 100)} % by what the instruments leave open, so that it may lie below ${rounded(most * 100)} %.`;
  return [findingOf(RULE, where, { message: `${words}: ${open}`, severity: 'note' })];
}

/** What the author states counts before what the readings give. */
function efficiencyOf(point: EfficiencyPoint, { efficiency }: CheckInput['derived']): Known<'ratio'> | null {
  if (point.efficiency !== null) return factValue(point.efficiency, { bound: 'use' });
  return efficiency.runs.flatMap(({ points }) => points).find(({ source }) => source === point)?.efficiency ?? null;
}

function wordsOf(point: EfficiencyPoint, { nominal }: Value<'ratio'>): string {
  if (point.efficiency !== null) return `Efficiency ${point.efficiency.quantity.written}`;
  const output = point.measuredOutput ?? point.output;
  if (point.loads.length > 0)
    return `The output of ${point.port ?? ''} over ${point.input?.quantity.written ?? 'the input'} is an efficiency of ${rounded(nominal * 100)} %`;
  const out = output === null || point.current === null ? 'The output' : `${output.quantity.written} × ${point.current.quantity.written}`;
  return `${out} of ${point.input?.quantity.written ?? 'the input'} is an efficiency of ${rounded(nominal * 100)} %`;
}
