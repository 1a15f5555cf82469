import type { StressRow } from '../derived/derived.ts';
import type { Finding } from '../diagnostics/finding.ts';
import type { Part } from '../entry/entry.ts';
import type { PartClass } from '../roles/role.ts';
import { roleOf } from '../roles/index.ts';
import { SI_UNITS } from '../units/dimension.ts';
import { isMissing, type Value } from '../values/value.ts';
import type { CheckInput, Rule } from './check.ts';
import { atKey, findingOf } from './finding-of.ts';
import { rounded } from './rounded.ts';

/** A stress row whose three numbers are all there, with the part it is about. */
export interface JudgedStress {
  readonly row: StressRow;
  readonly part: Part;
  readonly stress: Value;
  readonly rating: Value;
  readonly ratio: Value<'ratio'>;
}

/** Stresses that could be computed, of parts of these classes; all classes where none is named. */
export function judgedStresses({ entry, derived }: CheckInput, classes: readonly PartClass[] | null): JudgedStress[] {
  return derived.stress.flatMap((row) => {
    const part = entry.parts.find(
      (candidate) => candidate.stage === row.stage && row.references.some((name) => candidate.references.includes(name)),
    );
    const { stress, rating, ratio } = row;
    if (part === undefined || isMissing(stress) || isMissing(rating) || isMissing(ratio)) return [];
    const partClass = roleOf(part.role)?.partClass;
    return classes === null || (partClass !== undefined && classes.includes(partClass)) ? [{ row, part, stress, rating, ratio }] : [];
  });
}

/** Findings of a margin rule: over the policy's limit warns, an interval that straddles it is noted. A stress above the rating itself has its own rule. */
export function marginFindings(rule: Rule, input: CheckInput, classes: readonly PartClass[]): Finding[] {
  return judgedStresses(input, classes).flatMap((judged) => {
    const { row, part } = judged;
    if (row.limit === null || exceedsRating(judged) || (row.verdict !== 'over' && row.verdict !== 'straddles')) return [];
    const over = row.verdict === 'over';
    const verb = over ? 'is above' : 'may be above';
    const message = `${stressInWords(judged)}, which ${verb} the limit of ${row.limit.toFixed(2)} (policy ${row.policy}).`;
    return [findingOf(rule, atKey(...part.path), { message, severity: over ? 'warning' : 'note', subject: part.references.join(', ') })];
  });
}

/** Above the rating at its whole interval; a policy may accept a little more, as for safety capacitors at high line. */
export function exceedsRating({ row, ratio }: JudgedStress): boolean {
  return ratio.low > Math.max(1, row.limit ?? 1);
}

/** "C5: voltage 373 V on a rating of 400 V, ratio 0.93". */
export function stressInWords({ row, part, stress, rating, ratio }: JudgedStress): string {
  const spread = ratio.high - ratio.low > 0.005 ? ` (${ratio.low.toFixed(2)} to ${ratio.high.toFixed(2)})` : '';
  return `${part.references.join(', ')}: ${row.quantity} ${amount(stress)} on a rating of ${amount(rating)}, ratio ${ratio.nominal.toFixed(2)}${spread}`;
}

function amount(value: Value): string {
  return `${rounded(value.nominal)} ${SI_UNITS[value.dimension]}`;
}
