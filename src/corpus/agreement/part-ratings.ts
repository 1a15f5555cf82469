import { roleOf } from '../../roles/index.ts';
import type { PartFactsByNumber } from '../part-facts/part-facts.ts';
import { ratingDifferences } from '../rating-differences.ts';
import type { AcrossRemark, StatedPart } from './stated-text.ts';

/** A rating that more entries than this share is reported in one of them; the others would say the same hundreds of times. */
const MOST_REPORTED = 20;

/**
 * Part numbers that carry contradicting ratings, in each entry concerned, with the places of the others. A number that has a fact sheet is
 * compared with that sheet instead.
 */
export function partRatingRemarks(parts: readonly StatedPart[], facts: PartFactsByNumber): readonly AcrossRemark[] {
  const rated = parts.filter((part) => part.rating !== null && !facts.has(part.number));
  return [...Map.groupBy(rated, (part) => part.number)].flatMap(([number, uses]) => remarksOn(number, uses));
}

function remarksOn(number: string, uses: readonly StatedPart[]): readonly AcrossRemark[] {
  const byRating = Map.groupBy(uses, (use) => use.rating ?? '');
  if (byRating.size < 2) return [];
  return [...byRating].flatMap(([rating, stating]) => {
    const contradicting = [...byRating].filter(([other]) => other !== rating && contradicts(uses, rating, other));
    if (contradicting.length === 0) return [];
    const others = contradicting.flatMap(([, theirs]) => onceAnEntry(theirs).slice(0, 4)).map((use) => use.place);
    const theirs = contradicting.map(([other]) => other).join(' or ');
    const reported = stating.length > MOST_REPORTED ? stating.slice(0, 1) : stating;
    return onceAnEntry(reported).map((use) => ({
      rule: 'part-ratings-differ' as const,
      at: use.place,
      subject: use.subject,
      message: `${use.subject}: ${number} is ${rating} here and ${theirs} elsewhere`,
      others,
    }));
  });
}

function contradicts(uses: readonly StatedPart[], one: string, other: string): boolean {
  const role = uses[0]?.role ?? '';
  return ratingDifferences([one, other], roleOf(role)?.bareNumber ?? null).length > 0;
}

/** The first of several equal statements in one entry; `same as` repeats a part many times. */
function onceAnEntry(uses: readonly StatedPart[]): readonly StatedPart[] {
  return [...new Map([...uses].reverse().map((use) => [use.place.slug, use])).values()].reverse();
}
