import type { Finding } from '../diagnostics/finding.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'part-above-rated-temperature',
  title: 'A part was measured hotter than it is rated for',
  severity: 'warning',
  why: 'An electrolytic capacitor above its rated temperature dries out within months; other parts lose the ratings that the data sheet gives.',
  advice: 'Check the place, the emissivity and the marking; where it is right, answer the finding: it is then a result of the review.',
  source: commonPractice('the temperature that is marked on the part or stated in its data sheet, compared with its surface'),
};

export const partAboveRatedTemperature: Check = { ...RULE, check };

function check({ entry, derived }: CheckInput): Finding[] {
  return derived.heat.spots.flatMap(({ index, place, measured, limit, limitOf, verdict }) => {
    const point = entry.measurements[index];
    if (verdict !== 'over' || limitOf.of !== 'part' || point === undefined || isMissing(measured) || isMissing(limit)) return [];
    const names = limitOf.references.join(', ');
    const message = `${place}: ${rounded(measured.nominal)} °C, and ${names} is rated for ${rounded(limit.nominal)} °C.`;
    return [findingOf(RULE, atValue(...point.value.path), { message, subject: names })];
  });
}
