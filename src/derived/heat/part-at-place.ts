import type { Part } from '../../entry/entry.ts';

/** The part that a place names as its own surface: "C5", "can of C5", but never "case over C5". Null where it names none. */
export function partAtPlace(parts: readonly Part[], place: string): Part | null {
  if (/\b(?:case|over|near|beside|under|behind)\b/iu.test(place)) return null;
  const words = place.split(/[^\p{L}\p{N}_-]+/u);
  return parts.find(({ references }) => references.some((reference) => words.includes(reference))) ?? null;
}
