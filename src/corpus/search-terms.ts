import { canonicalText } from '../units/canonical-text.ts';
import { searchQuantities } from './search-quantities.ts';

/** Words that stand in every text and find nothing. */
const COMMON_WORDS: ReadonlySet<string> = new Set(
  'a an and are as at be but by can for from has have in into is it its no not of on one or so than that the their then there these this to was were what when where which with'.split(
    ' ',
  ),
);

/** Longest word that is kept; what is longer is no word that anybody types. */
const LONGEST = 40;

/** A text with one code point for each meaning, raised digits as digits, both micro signs as u, and ohm as a word; case is kept. */
export function searchText(text: string): string {
  // Plain ASCII has nothing to fold.
  if (!/[^\n\r\t -~]/.test(text)) return text;
  return canonicalText(text)
    .replaceAll('³', '3')
    .replaceAll('²', '2')
    .replaceAll('µ', 'u')
    .replaceAll('Ω', 'ohm')
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll('⎓', ' ');
}

const WORD = /[\p{L}\p{N}]+(?:[-./+_][\p{L}\p{N}]+)*/gu;

/** Every term under which a text is found: words, part numbers with and without hyphens and from each of their pieces on, and quantities. */
export function searchTerms(text: string): ReadonlySet<string> {
  const folded = searchText(text);
  const terms = new Set(searchQuantities(folded).map((quantity) => quantity.key));
  for (const word of new Set(folded.match(WORD))) for (const term of rememberedTerms(word)) terms.add(term);
  return terms;
}

// Texts repeat their words: most of a corpus is made of some ten thousand.
const REMEMBERED = new Map<string, readonly string[]>();
const MOST_REMEMBERED = 30_000;

function rememberedTerms(word: string): readonly string[] {
  const known = REMEMBERED.get(word);
  if (known !== undefined) return known;
  const terms = termsOfWord(word.toLowerCase());
  if (REMEMBERED.size < MOST_REMEMBERED) REMEMBERED.set(word, terms);
  return terms;
}

/** The one form in which a typed word is looked up: small letters, without hyphens; units keep their stroke. */
export function lookUpForm(word: string): string {
  const folded = searchText(word).toLowerCase();
  const whole = folded.match(WORD)?.[0] ?? '';
  return (isRatioOfUnits(whole) || isDecimal(whole) ? whole : whole.replaceAll(/[^\p{L}\p{N}]/gu, '')).slice(0, LONGEST);
}

/** Whether a word is left out of the index because it stands everywhere. */
export function isCommonWord(word: string): boolean {
  return COMMON_WORDS.has(word);
}

function termsOfWord(word: string): readonly string[] {
  if (isRatioOfUnits(word) || isDecimal(word)) return [word];
  const joined = word.replaceAll(/[^\p{L}\p{N}]/gu, '');
  const pieces = word.split(/[^\p{L}\p{N}]+/u);
  return [joined, ...pieces, ...(/\d/u.test(joined) ? tails(joined) : [])].filter(
    (term) => term.length > 1 && term.length <= LONGEST && !COMMON_WORDS.has(term),
  );
}

/** From each place on where letters meet digits: "ipd60r360" gives "60r360", "r360" and "360", so that a half of a number is found. */
function tails(word: string): readonly string[] {
  const found: string[] = [];
  for (let at = 1; at < word.length && found.length < 8; at += 1) {
    if (/\d/u.test(word.charAt(at)) !== /\d/u.test(word.charAt(at - 1))) found.push(word.slice(at));
  }
  return found;
}

function isRatioOfUnits(word: string): boolean {
  return /^w\/(?:cm3|in3|kg|l)$/u.test(word);
}

function isDecimal(word: string): boolean {
  return /^\d+[.]\d+\p{L}*$/u.test(word);
}
