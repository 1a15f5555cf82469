import type { Entry } from '../entry/entry.ts';
import type { DeratingPolicy } from '../standards/derating/policy.ts';
import type { InputFigures, StressRow } from './derived.ts';
import { isFitted } from './fitted-parts.ts';
import { mainsPart } from './stress/mains-parts.ts';
import { modelledPart } from './stress/modelled-parts.ts';
import type { StageGivens } from './stress/stage-givens.ts';

/** Every stress of the entry against the rating of its part, in the order in which the parts stand, judged by one policy. */
export function stressRows(entry: Entry, input: InputFigures, givens: StageGivens, policy: DeratingPolicy): readonly StressRow[] {
  const given = { entry, input, policy };
  return entry.parts.filter(isFitted).flatMap((part) => mainsPart(part, given) ?? modelledPart(part, given, givens));
}
