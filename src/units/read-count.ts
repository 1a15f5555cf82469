import { endOfDigits, isDigitAt, isLetterAt, isSpaceAt } from './characters.ts';
import { takeWord } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import { matchUnit } from './match-unit.ts';

const PIECES = ['pcs', 'pc', 'pieces', 'piece', 'off', 'ea', 'units', 'parts'];
const QUANTITY_WORDS = ['qty', 'quantity', 'count'];
const MOST = 999;
/** A letter code or a safety class right behind the count: "2 × R10", "2×Y1". */
const OPENS_PART = /^(?:R\d|[XY][1-4])/;

function isTimes(text: string, index: number): boolean {
  const sign = text.charAt(index);
  return sign !== '' && '×*x'.includes(sign);
}

function afterSpaces(text: string, index: number): number {
  let at = index;
  while (isSpaceAt(text, at)) at += 1;
  return at;
}

/** Reads how many: "2 ×", "2x", "2 *", "2 pcs", "×2", "x 2 in parallel", "qty 2". Moves behind it; null and unmoved otherwise. */
export function readCount(cursor: Cursor, isSeparate: boolean): number | null {
  const before = cursor.at;
  const count = isDigitAt(cursor.text, cursor.at) ? readLeading(cursor) : readTrailing(cursor, isSeparate);
  if (count !== null && count >= 1 && count <= MOST) return count;
  cursor.at = before;
  return null;
}

function readLeading(cursor: Cursor): number | null {
  const { text } = cursor;
  const end = endOfDigits(text, cursor.at);
  const count = Number(text.slice(cursor.at, end));
  const times = afterSpaces(text, end);
  const isCapital = text.charAt(times) === 'X' && !isLetterAt(text, times + 1);
  if (isTimes(text, times) || isCapital) {
    const next = afterSpaces(text, times + 1);
    const opens =
      isDigitAt(text, next) || text.charAt(next) === '(' || text.charAt(next) === '.' || OPENS_PART.test(text.slice(next, next + 3));
    if (!opens || text.startsWith('10^', next)) return null;
    cursor.at = times + 1;
    return count;
  }
  const inWords = /^in\s+(?=parallel|series)/i.exec(text.slice(times, times + 16));
  if (inWords !== null) {
    cursor.at = times + inWords[0].length;
    return count;
  }
  // Every number comes past here; few are followed by a word for pieces.
  if (!'poeu'.includes(text.charAt(times).toLowerCase() || ' ')) return null;
  cursor.at = end;
  return takeWord(cursor, PIECES) === null ? null : count;
}

function readTrailing(cursor: Cursor, isSeparate: boolean): number | null {
  const { text } = cursor;
  const isNamed = isSeparate && takeWord(cursor, QUANTITY_WORDS) !== null;
  if (isNamed && (text.charAt(cursor.at) === ':' || text.charAt(cursor.at) === '=')) cursor.at += 1;
  const isMultiplied = !isNamed && isTimes(text, cursor.at) && (isSeparate || text.charAt(cursor.at) !== 'x');
  if (!isNamed && !isMultiplied) return null;
  const start = afterSpaces(text, isNamed ? cursor.at : cursor.at + 1);
  const end = endOfDigits(text, start);
  if (end === start || text.charAt(end) === '.' || isLetterAt(text, end)) return null;
  const next = afterSpaces(text, end);
  const isInWords = /^in\s+(?:parallel|series)/i.test(text.slice(next, next + 16));
  if (!isInWords && matchUnit(text, next, null, false) !== null) return null;
  cursor.at = end;
  return Number(text.slice(start, end));
}
