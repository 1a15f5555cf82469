import type { PartFactsByNumber } from '../part-facts/part-facts.ts';
import { perhapsSame } from '../perhaps-same.ts';
import type { AcrossRemark, StatedMaker, StatedPart, StatedPlace } from './stated-text.ts';

/** A spelling that more entries share is reported in so many of them; one look at its page finds the others. */
const MOST_REPORTED = 20;

/**
 * Part numbers that differ only in writing habits or in a packing suffix, proposed as one in the entries with the rarer spelling. They are
 * never merged; a fact sheet that lists the spelling settles it.
 */
export function partSpellingRemarks(parts: readonly StatedPart[], facts: PartFactsByNumber): readonly AcrossRemark[] {
  const uses = Map.groupBy(parts, (part) => part.number);
  const alike = perhapsSame([...uses.keys()].sort());
  return [...alike].flatMap(([number, others]) => {
    const open = others.filter((other) => facts.get(number) === undefined || facts.get(number) !== facts.get(other));
    return rarer(number, open, uses).flatMap((part) => [
      {
        rule: 'part-spelling-variants' as const,
        at: part.place,
        subject: part.subject,
        message: `${part.subject}: ${number} is perhaps the same part as ${open.join(' and ')}`,
        others: placesOf(open, uses),
      },
    ]);
  });
}

/** Makers' names that differ only in writing habits or in the form of the company, in the entries with the rarer spelling. */
export function makerSpellingRemarks(makers: readonly StatedMaker[]): readonly AcrossRemark[] {
  const uses = Map.groupBy(makers, (maker) => maker.name);
  const alike = perhapsSame([...uses.keys()].sort(), 'name');
  return [...alike].flatMap(([name, others]) =>
    rarer(name, others, uses).map((maker) => ({
      rule: 'maker-spelling-variants' as const,
      at: maker.place,
      subject: name,
      message: `"${name}" is perhaps the same maker as ${others.map((other) => `"${other}"`).join(' and ')}`,
      others: placesOf(others, uses),
    })),
  );
}

/** The uses of a spelling, one an entry, unless another spelling is used by fewer; both where they are even. */
function rarer<T extends { readonly place: StatedPlace }>(
  text: string,
  others: readonly string[],
  uses: ReadonlyMap<string, readonly T[]>,
): readonly T[] {
  if (others.length === 0) return [];
  const entriesOf = (spelling: string): number => new Set(uses.get(spelling)?.map((use) => use.place.slug)).size;
  const fewest = Math.min(...[text, ...others].map(entriesOf));
  if (entriesOf(text) > fewest) return [];
  const first = new Map([...(uses.get(text) ?? [])].reverse().map((use) => [use.place.slug, use]));
  return [...first.values()].reverse().slice(0, MOST_REPORTED);
}

function placesOf<T extends { readonly place: StatedPlace }>(
  spellings: readonly string[],
  uses: ReadonlyMap<string, readonly T[]>,
): readonly StatedPlace[] {
  return spellings.flatMap((spelling) => (uses.get(spelling) ?? []).slice(0, 2).map((use) => use.place));
}
