import type { Finding } from '../diagnostics/finding.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atKey, commonPractice, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';
import { JOULES_PER_WATT_HOUR } from '../units/watt-hour.ts';

const RULE: Rule = {
  id: 'rated-capacity-not-reached',
  title: 'A power bank gives less than its rated output capacity',
  severity: 'warning',
  why: 'The rated capacity is a promise about the output, with the losses already taken off.',
  advice:
    'Say at which current it was measured; at a higher current than the label names less comes out. Where it stays so, answer the finding.',
  source: commonPractice('95 % of the printed energy at the printed voltage, within 10 % of that voltage'),
};

export const ratedCapacityNotReached: Check = { ...RULE, check };

const LEAST = 0.95;

function check({ entry, derived: { bank } }: CheckInput): Finding[] {
  if (bank === null) return [];
  const { rated } = bank;
  return bank.delivered.flatMap(({ index, log, energy, ofRated, output }) => {
    if (isMissing(ofRated) || isMissing(energy) || isMissing(rated.energy) || ofRated.high >= LEAST) return [];
    const path = index === null ? entry.logs.find(({ id }) => id === log)?.path : entry.measurements[index]?.path;
    if (path === undefined) return [];
    const [out, promised] = [energy.nominal, rated.energy.nominal].map((joules) => rounded(joules / JOULES_PER_WATT_HOUR));
    const message = `${out ?? ''} Wh delivered at ${output ?? 'the output'}, and ${promised ?? ''} Wh are rated there: ${rounded(ofRated.nominal * 100)} %.`;
    return [findingOf(RULE, atKey(...path), { message, subject: 'delivered energy' })];
  });
}
