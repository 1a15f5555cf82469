import type { CorpusSheet } from '../corpus-sheet.ts';
import type { IndexedSheet, TokenIndex } from './token-index.ts';

/** Most that size and rated power take from the likeness of two designs (our own choice). */
const NUMBERS_SHARE = 0.1;

/** Ratio at which two sizes or powers are half as close as equal ones. */
const HALF_AT = 1.5;

/**
 * Likeness of two sheets, 0 to 1, the same from either side: cosine between their vectors of token weights, lowered by at most a tenth
 * where their volumes and rated powers are far apart.
 *
 * @param cosine that of the two, where it is known already; the likeness is never above it
 */
export function likenessOf(
  index: TokenIndex,
  one: IndexedSheet,
  other: IndexedSheet,
  cosine: number = cosineOf(index, one, other),
): number {
  const closeness = numbersCloseness(one.sheet, other.sheet);
  return closeness === null ? cosine : cosine * (1 - NUMBERS_SHARE * (1 - closeness));
}

/** Cosine between the weights of two sheets: 0 where they share nothing that says anything, 1 where they share all. */
export function cosineOf({ weights }: TokenIndex, one: IndexedSheet, other: IndexedSheet): number {
  if (one.length === 0 || other.length === 0) return 0;
  let product = 0;
  eachShared(one.tokens, other.tokens, (number) => (product += (weights[number] ?? 0) ** 2));
  return Math.min(1, product / (one.length * other.length));
}

/** Calls back for each number that stands in both ascending lists. */
export function eachShared(one: Int32Array, other: Int32Array, see: (number: number) => void): void {
  let left = 0;
  let right = 0;
  while (left < one.length && right < other.length) {
    const first = one[left] ?? 0;
    const second = other[right] ?? 0;
    if (first === second) see(first);
    if (first <= second) left += 1;
    if (second <= first) right += 1;
  }
}

/** Mean closeness of volume and rated power, as far as both sheets have them; null where they have neither. */
function numbersCloseness(one: CorpusSheet, other: CorpusSheet): number | null {
  const pairs = [
    [one.ratedWatts, other.ratedWatts],
    [volumeOf(one), volumeOf(other)],
  ] as const;
  const known = pairs.flatMap(([first, second]) => (isLength(first) && isLength(second) ? [closeness(first, second)] : []));
  return known.length === 0 ? null : known.reduce((sum, each) => sum + each, 0) / known.length;
}

function isLength(number: number | null): number is number {
  return number !== null && number > 0;
}

/** 1 for equal numbers, a half at one and a half times, going on by the logarithm of the ratio. */
function closeness(one: number, other: number): number {
  return 0.5 ** (Math.abs(Math.log(one) - Math.log(other)) / Math.log(HALF_AT));
}

/** Volume of the outline in cubic millimetres; boards and cases are not of one kind, so a bare board has none here. */
function volumeOf({ outline, traits }: CorpusSheet): number | null {
  return outline === null || traits.basis !== 'cased' ? null : outline[0] * outline[1] * outline[2];
}
