import { SHORTEST_TEST } from '../derived/heat/sustained-run.ts';
import type { Finding } from '../diagnostics/finding.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'sustained-not-shown',
  title: 'The test was too short to show what is sustained',
  severity: 'note',
  why: 'A case of this size takes half an hour to warm up, and a fold-back comes only then.',
  advice: 'Run it for 30 minutes or longer and add the last point.',
  source: commonPractice('30 minutes as the shortest test'),
};

export const sustainedNotShown: Check = { ...RULE, check };

function check({ entry, derived }: CheckInput): Finding[] {
  return derived.sustained.flatMap(({ points, tested, port }) => {
    const last = entry.measurements[points.at(-1) ?? -1];
    if (last === undefined || isMissing(tested) || tested.nominal >= SHORTEST_TEST) return [];
    const message = `${port ?? 'The whole device'}: tested for ${rounded(tested.nominal / 60)} min; sustained not shown.`;
    return [findingOf(RULE, atValue(...last.value.path), { message, subject: port ?? 'sustained power' })];
  });
}
