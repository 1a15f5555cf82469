import { readRating } from '../units/read-rating.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Quantity } from '../units/quantity.ts';

/** One rating line as found, with the number of sheets that state it. */
export interface FoundRating {
  readonly written: string;
  readonly sheets: number;
}

/**
 * The dimensions in which rating lines of one part number contradict each other: two lines that both state a voltage must state
 * the same one. Spelling, order and what only one line states are no contradiction. Lines that cannot be read are compared as text.
 *
 * @param bareNumber dimension of a number without a unit, as the part's role has it.
 * @returns words such as "voltage", in the order first found; "wording" where an unreadable line differs from the others.
 */
export function ratingDifferences(lines: readonly string[], bareNumber: Dimension | null): readonly string[] {
  const stated = new Map<string, Set<string>>();
  const unreadable = new Set<string>();
  let readable = 0;
  for (const line of new Set(lines)) {
    const reading = readRating(line, { bareNumber });
    if (!reading.ok) {
      unreadable.add(line.replaceAll(/\s+/gu, ' ').trim().toLowerCase());
      continue;
    }
    readable += 1;
    for (const [dimension, numbers] of byDimension(reading.value.quantities)) {
      const known = stated.get(dimension) ?? new Set<string>();
      stated.set(dimension, known.add(numbers));
    }
  }
  const differing = [...stated].filter(([, numbers]) => numbers.size > 1).map(([dimension]) => dimension);
  return unreadable.size > 1 || (unreadable.size === 1 && readable > 0) ? [...differing, 'wording'] : differing;
}

/** All numbers that one line states in each dimension, as one comparable text. */
function byDimension(quantities: readonly Quantity[]): ReadonlyMap<string, string> {
  const groups = new Map<string, string[]>();
  for (const quantity of quantities) {
    const span = [quantity.low, quantity.nominal, quantity.high].map((number) => (number === null ? '' : number.toPrecision(6))).join('~');
    groups.set(quantity.dimension, [...(groups.get(quantity.dimension) ?? []), span]);
  }
  return new Map([...groups].map(([dimension, spans]) => [dimension, spans.sort().join(' ')]));
}
