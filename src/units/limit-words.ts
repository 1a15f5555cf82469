import { isDigitAt } from './characters.ts';
import { isAtEnd, skipSpaces, takeSign, takeWord } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import type { Bound, Qualifier } from './quantity.ts';

/** What stands before or behind a number and makes it a limit, a typical value or an approximation. */
export interface Limit {
  readonly bound: Bound | null;
  readonly qualifier: Qualifier | null;
  readonly isApproximate: boolean;
}

const SIGNS: readonly (readonly [string, Bound])[] = [
  ['≤', 'at most'],
  ['<=', 'at most'],
  ['=<', 'at most'],
  ['<', 'below'],
  ['≥', 'at least'],
  ['>=', 'at least'],
  ['>', 'above'],
];

const PHRASES: readonly (readonly [string, Bound])[] = [
  ['not more than', 'at most'],
  ['no more than', 'at most'],
  ['not less than', 'at least'],
  ['no less than', 'at least'],
  ['up to', 'at most'],
  ['at most', 'at most'],
  ['at least', 'at least'],
  ['well above', 'above'],
  ['well below', 'below'],
  ['more than', 'above'],
  ['greater than', 'above'],
  ['less than', 'below'],
  ['lower than', 'below'],
  ['above', 'above'],
  ['over', 'above'],
  ['exceeds', 'above'],
  ['below', 'below'],
  ['under', 'below'],
  ['from', 'value'],
  ['between', 'value'],
];

const BEHIND: readonly (readonly [string, Bound])[] = [
  ['or more', 'at least'],
  ['and above', 'at least'],
  ['or less', 'at most'],
  ['and below', 'at most'],
];

const QUALIFIERS: readonly (readonly [string, Qualifier])[] = [
  ['typical', 'typical'],
  ['typ', 'typical'],
  ['nominal', 'nominal'],
  ['nom', 'nominal'],
  ['maximum', 'maximum'],
  ['max', 'maximum'],
  ['minimum', 'minimum'],
  ['min', 'minimum'],
];

const QUALIFIER_WORDS = QUALIFIERS.map(([word]) => word);
const PHRASE_WORDS = PHRASES.map(([word]) => word);
const BEHIND_WORDS = BEHIND.map(([word]) => word);
const APPROXIMATE = ['approximately', 'approx', 'about', 'circa', 'ca', 'around', 'roughly'];

function meaning<T>(rows: readonly (readonly [string, T])[], word: string): T | null {
  for (const row of rows) if (row[0] === word) return row[1];
  return null;
}

function takeLimitSign(cursor: Cursor): Bound | null {
  for (const [sign, bound] of SIGNS) if (takeSign(cursor, sign)) return bound;
  return null;
}

/** The bound that a maximum or minimum implies. */
function boundOf(qualifier: Qualifier | null): Bound | null {
  if (qualifier === 'maximum') return 'at most';
  return qualifier === 'minimum' ? 'at least' : null;
}

/** Reads limits in front of a number: "≤", "up to", "max.", "typ", "approx.", "~". Null where nothing of the kind stands. */
export function readLimitBefore(cursor: Cursor): Limit | null {
  if (isDigitAt(cursor.text, cursor.at)) return null;
  let bound: Bound | null = null;
  let qualifier: Qualifier | null = null;
  let isApproximate = false;
  const start = cursor.at;
  for (let turn = 0; turn < 3; turn += 1) {
    const before = cursor.at;
    const signed = takeLimitSign(cursor);
    const phrase = signed === null ? takeWord(cursor, PHRASE_WORDS) : null;
    const word = signed === null && phrase === null ? takeWord(cursor, QUALIFIER_WORDS) : null;
    bound = signed ?? (phrase === null ? bound : meaning(PHRASES, phrase)) ?? bound;
    if (word !== null) qualifier = meaning(QUALIFIERS, word);
    if (cursor.at === before && (takeSign(cursor, '≈') || takeSign(cursor, '~') || takeWord(cursor, APPROXIMATE) !== null))
      isApproximate = true;
    if (cursor.at === before) break;
    if (word !== null) takeSign(cursor, ':');
  }
  if (cursor.at === start) return null;
  return { bound: bound === 'value' ? null : (bound ?? boundOf(qualifier)), qualifier, isApproximate };
}

/** Reads qualifiers behind a number: "typ", "max.", "(typ)", "or more", "(min/typ/max)". */
export function readLimitBehind(cursor: Cursor): Limit | null {
  const start = cursor.at;
  skipSpaces(cursor);
  if (!'(tTnNmMoOaA'.includes(cursor.text.charAt(cursor.at)) || isAtEnd(cursor)) return restored(cursor, start);
  const isBracketed = takeSign(cursor, '(');
  const behind = takeWord(cursor, BEHIND_WORDS);
  const word = behind === null ? takeWord(cursor, QUALIFIER_WORDS) : null;
  if (behind === null && word === null) return restored(cursor, start);
  const isTriple = takeQualifierRow(cursor);
  if (isBracketed && !takeSign(cursor, ')')) return restored(cursor, start);
  const qualifier = word === null || isTriple ? null : meaning(QUALIFIERS, word);
  return { bound: behind === null ? boundOf(qualifier) : meaning(BEHIND, behind), qualifier, isApproximate: false };
}

function restored(cursor: Cursor, start: number): null {
  cursor.at = start;
  return null;
}

/** "/typ/max" behind the first word of a column heading. */
function takeQualifierRow(cursor: Cursor): boolean {
  let isRow = false;
  for (let before = cursor.at; takeSign(cursor, '/'); before = cursor.at) {
    if (takeWord(cursor, QUALIFIER_WORDS) === null) {
      cursor.at = before;
      break;
    }
    isRow = true;
  }
  return isRow;
}
