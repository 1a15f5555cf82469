import { isDigitAt, isSpaceAt, isWordAt } from './characters.ts';
import { foldText } from './fold-text.ts';
import type { FoldedText } from './fold-text.ts';
import type { ReadingRemark, Span } from './quantity.ts';

/** Longer texts are refused: no rating is longer, and a pasted paragraph is a slip. */
const LONGEST_TEXT = 300;

/** A place in a folded text, with the remarks gathered on the way. Readers move `at` forward, or put it back. */
export interface Cursor {
  readonly written: string;
  readonly folded: FoldedText;
  readonly text: string;
  at: number;
  readonly remarks: ReadingRemark[];
}

export function cursorOn(written: string): Cursor {
  const folded = foldText(written);
  return { written, folded, text: folded.text, at: 0, remarks: [] };
}

/** Why a text cannot be read at all: empty, or too long. */
export function refusalOf(written: string, expected: string, longest: number = LONGEST_TEXT): ReadingRemark | null {
  const span = { start: 0, end: written.length };
  if (written.length > longest) {
    const message = `this text has ${written.length} characters; at most ${longest} are read as ${expected}`;
    return { severity: 'error', message, suggestion: null, span };
  }
  if (foldText(written).text.trim() !== '') return null;
  return { severity: 'error', message: `empty: ${expected} was expected`, suggestion: null, span };
}

export function skipSpaces(cursor: Cursor): void {
  while (isSpaceAt(cursor.text, cursor.at)) cursor.at += 1;
}

export function isAtEnd(cursor: Cursor): boolean {
  return cursor.at >= cursor.text.length;
}

export function spanBetween(cursor: Cursor, start: number, end: number): Span {
  return { start: cursor.folded.startAt(start), end: Math.max(cursor.folded.startAt(start), cursor.folded.endAt(end)) };
}

/** The piece as the author wrote it, code points included. */
export function writtenBetween(cursor: Cursor, start: number, end: number): string {
  const span = spanBetween(cursor, start, end);
  return cursor.written.slice(span.start, span.end);
}

export function remark(
  cursor: Cursor,
  severity: ReadingRemark['severity'],
  message: string,
  start: number,
  end: number,
  suggestion: string | null = null,
): void {
  cursor.remarks.push({ severity, message, suggestion, span: spanBetween(cursor, start, end) });
}

export function hasErrors(remarks: readonly ReadingRemark[]): boolean {
  return remarks.some((entry) => entry.severity === 'error');
}

/** Steps over this literal if it stands here, after spaces; case counts. */
export function takeSign(cursor: Cursor, sign: string): boolean {
  const before = cursor.at;
  skipSpaces(cursor);
  if (cursor.text.startsWith(sign, cursor.at)) {
    cursor.at += sign.length;
    return true;
  }
  cursor.at = before;
  return false;
}

/** Steps over the first of these words (lower case) that stands here as a whole word, after spaces; a full stop after it too. */
export function takeWord(cursor: Cursor, words: readonly string[]): string | null {
  const before = cursor.at;
  skipSpaces(cursor);
  const here = cursor.text.slice(cursor.at, cursor.at + 24).toLowerCase();
  for (const word of words) {
    if (!here.startsWith(word) || isWordAt(cursor.text, cursor.at + word.length)) continue;
    cursor.at += word.length;
    if (cursor.text.charAt(cursor.at) === '.' && !isWordAt(cursor.text, cursor.at + 1)) cursor.at += 1;
    return word;
  }
  cursor.at = before;
  return null;
}

/** Says that the rest was not understood, quoting it. */
export function refuseRest(cursor: Cursor, why: string, suggestion: string | null = null): void {
  skipSpaces(cursor);
  const tail = writtenBetween(cursor, cursor.at, cursor.text.length).trimEnd();
  remark(cursor, 'error', `“${tail}” is left over: ${why}`, cursor.at, cursor.text.length, suggestion);
}

/** "AC" or "DC" in front of a number, apart from it or glued as labels print it ("AC100-240V"), a colon after it too. */
export function takeWaveformPrefix(cursor: Cursor): 'AC' | 'DC' | null {
  const before = cursor.at;
  skipSpaces(cursor);
  const word = cursor.text.slice(cursor.at, cursor.at + 2).toUpperCase();
  const next = cursor.text.charAt(cursor.at + 2);
  if ((word === 'AC' || word === 'DC') && (!isWordAt(cursor.text, cursor.at + 2) || isDigitAt(cursor.text, cursor.at + 2)) && next !== '') {
    cursor.at += 2;
    takeSign(cursor, ':');
    return word;
  }
  cursor.at = before;
  return null;
}
