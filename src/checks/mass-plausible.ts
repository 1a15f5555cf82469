import type { Finding } from '../diagnostics/finding.ts';
import { isMissing } from '../values/value.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, commonPractice, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'mass-plausible',
  title: 'Mass and size do not fit',
  severity: 'warning',
  why: 'Adapters weigh 0.5 to 3 g/cm³, from air-filled cases to potted ones; outside of it a digit or a unit slipped.',
  advice: 'Compare the mass and the size with the notes.',
  source: commonPractice('mass over outer volume of adapters'),
};

export const massPlausible: Check = { ...RULE, check };

const LEAST = 0.3;
const MOST = 4;

function check({ entry, derived }: CheckInput): Finding[] {
  const { mass, basis } = entry.body;
  const { volume } = derived.size;
  if (mass === null || basis !== 'cased' || isMissing(volume)) return [];
  const gramsPerCm3 = (mass.quantity.nominal * 1e3) / (volume.nominal * 1e6);
  if (gramsPerCm3 >= LEAST && gramsPerCm3 <= MOST) return [];
  const message = `${mass.quantity.written} in ${rounded(volume.nominal * 1e6)} cm³ is ${rounded(gramsPerCm3)} g/cm³.`;
  return [findingOf(RULE, atValue(...mass.path), { message, subject: 'mass' })];
}
