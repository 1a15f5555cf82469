import type { Finding } from '../diagnostics/finding.ts';
import type { Fact, InsulationPlace } from '../entry/entry.ts';
import type { Check, CheckInput, Rule } from './check.ts';
import { atValue, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

const RULE: Rule = {
  id: 'insulation-distance-plausible',
  title: 'A distance between the two sides is far from usual',
  severity: 'warning',
  why: 'Test reports require 3 to 5 mm and find 6.5 to 8 mm there; 0.5 to 0.7 mm was found on boards that were unsafe. Measured by caliper, not a test.',
  advice: 'Measure again; where the small distance is real, answer the finding: it is then a result of the review.',
  source: {
    title: 'Report tables 5.4.2.2, 5.4.2.4 and 5.4.3 of IEC 62368-1 test reports, and a published look at one USB supply',
    section: '3.0 / 4.0 mm clearance and 5.0 mm creepage required; 0.5 to 0.7 mm found',
    standing: 'read',
  },
};

export const insulationDistancePlausible: Check = { ...RULE, check };

const LEAST_METRES = 1e-3;
const MOST_METRES = 20e-3;

function check({ entry, derived }: CheckInput): Finding[] {
  if (entry.nameplate.input?.kind === 'DC') return [];
  return entry.insulation.flatMap((place, index) =>
    [place.clearance, place.creepage].flatMap((fact, which) =>
      fact === null ? [] : judged(fact, which === 0 ? 'clearance' : 'creepage', place, (derived.insulation[index]?.kind ?? null) !== null),
    ),
  );
}

function judged(fact: Fact<'length'>, name: string, place: InsulationPlace, isJudged: boolean): Finding[] {
  const metres = fact.quantity.nominal;
  const finding = (message: string): Finding[] => [findingOf(RULE, atValue(...fact.path), { message, subject: place.id })];
  if (metres > MOST_METRES) {
    return finding(
      `The ${name} of ${place.id}, ${fact.quantity.written}, is more than an adapter has room for. Did you mean ${rounded(metres * 100)} mm?`,
    );
  }
  // Where the tables say what is asked, the finding is theirs.
  if (metres >= LEAST_METRES || isJudged) return [];
  return finding(`The ${name} of ${place.id} is ${fact.quantity.written}, a fraction of what is required between mains and output.`);
}
