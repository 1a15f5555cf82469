import type { Finding } from '../diagnostics/finding.ts';
import type { AskedOfRatio, WindingFigures } from '../derived/windings/winding-figures.ts';
import { isMissing, type Known } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'turns-ratio-against-voltages',
  title: 'A turns ratio that the voltages do not allow',
  severity: 'warning',
  why: 'Input, output and turns settle at what duty or gain a converter has to work; far outside of what can be built, one of the three is a slip.',
  advice: 'Look whether primary stands first, then at the bus and at the output.',
  source: commonPractice('flybacks work at a duty of 0.05 to 0.85, forwards at 0.03 to 0.95, LLC tanks at a gain of 0.3 to 2.5'),
};

export const turnsRatioAgainstVoltages: Check = { ...RULE, check };

function check({ derived }: CheckInput): Finding[] {
  return derived.windings.flatMap(judged);
}

/** Only where the whole interval lies outside: a bus that had to be assumed widens it. */
function judged({ stage, stated, asked }: WindingFigures): Finding[] {
  const [used] = stated;
  if (used === undefined || asked === null || isMissing(asked.value) || standing(asked, asked.value) !== 'outside') return [];
  const { name, value, least, most } = asked;
  const turned = standing(asked, asked.inverse) === 'inside' && !isMissing(asked.inverse);
  const guess = turned ? ` Turned round it would be ${rounded(asked.inverse.nominal)}: did you mean secondary over primary?` : '';
  const message = `${stage}: ${used.written} makes the ${name} ${rounded(value.nominal)}, where ${rounded(least)} to ${rounded(most)} can be built.${guess}`;
  return [findingOf(RULE, atValue(...used.path), { message, subject: stage })];
}

function standing({ least, most }: AskedOfRatio, known: Known<'ratio'>): 'inside' | 'outside' | 'open' {
  if (isMissing(known)) return 'open';
  if (known.high < least || known.low > most) return 'outside';
  return known.nominal >= least && known.nominal <= most ? 'inside' : 'open';
}
