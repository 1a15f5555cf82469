import { isDigitAt, isLetterAt } from './characters.ts';
import { remark, skipSpaces, takeWord, writtenBetween } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import type { Dimension } from './dimension.ts';
import { matchUnit } from './match-unit.ts';
import { asDecimalComma, scanNumeral } from './numeral.ts';
import type { Numeral } from './numeral.ts';
import { readRkmCode } from './rkm-code.ts';
import type { Tolerance } from './tolerance-letter.ts';
import { countsInThousands } from './unit.ts';
import type { RefusedSpelling, Unit } from './unit.ts';

/** What a reader is after: it decides spellings that several dimensions share, and numbers that carry no unit. */
export interface Wanted {
  readonly dimension: Dimension | null;
  /** Dimension of a number without a unit; null refuses such a number. */
  readonly bareNumber: Dimension | null;
  /** After the speed letter of a fuse. */
  readonly isFuse: boolean;
}

/** A number with the unit behind it, if there is one. */
export interface Term {
  readonly numeral: Numeral;
  readonly unit: Unit | null;
  readonly waveform: 'AC' | 'DC' | null;
  /** From a letter code such as 4k7J. */
  readonly tolerance: Tolerance | null;
  /** A spelling that is known and not accepted stood where the unit should. */
  readonly refusal: (RefusedSpelling & { readonly end: number }) | null;
  readonly start: number;
  readonly end: number;
}

/** Reads one number and its unit, moving the cursor behind them; null and unmoved where no number stands. */
export function readTerm(cursor: Cursor, wanted: Wanted): Term | null {
  const before = cursor.at;
  skipSpaces(cursor);
  const start = cursor.at;
  const code = readRkmCode(cursor.text, start, wanted.dimension) ?? readRailCode(cursor.text, start);
  if (code !== null) {
    cursor.at = code.end;
    return {
      numeral: plainNumeral(code.digits, start, code.end),
      unit: code.unit,
      waveform: null,
      tolerance: code.tolerance,
      refusal: null,
      start,
      end: code.end,
    };
  }
  const numeral = scanNumeral(cursor.text, start);
  if (numeral === null) {
    cursor.at = before;
    return null;
  }
  cursor.at = numeral.end;
  return readUnitBehind(cursor, numeral, wanted);
}

function plainNumeral(digits: string, start: number, end: number): Numeral {
  const plain = { isDecimalComma: false, hasExponent: false, doubt: null, isSpaceGrouped: false } as const;
  return { sign: '', digits, exponent: 0, start, end, ...plain };
}

/** Supply rails as schematics write them: 3V3, 1V8. One digit behind the letter and nothing that could be another value. */
function readRailCode(text: string, start: number): { digits: string; unit: Unit; tolerance: null; end: number } | null {
  const length = isDigitAt(text, start + 1) ? 2 : 1;
  const letter = text.charAt(start + length);
  if (!isDigitAt(text, start) || (letter !== 'V' && letter !== 'v') || !isDigitAt(text, start + length + 1)) return null;
  const end = start + length + 2;
  if (isDigitAt(text, end) || isLetterAt(text, end) || text.charAt(end) === '.' || text.charAt(end) === ',') return null;
  let next = end;
  while (text.charAt(next) === ' ') next += 1;
  if (matchUnit(text, next, null, false) !== null) return null;
  const volt = matchUnit('V', 0, 'voltage', false)?.unit ?? null;
  const digits = `${text.slice(start, start + length)}.${text.charAt(end - 1)}`;
  return volt === null ? null : { digits, unit: volt, tolerance: null, end };
}

function readUnitBehind(cursor: Cursor, numeral: Numeral, wanted: Wanted): Term {
  skipSpaces(cursor);
  const match = matchUnit(cursor.text, cursor.at, wanted.dimension, wanted.isFuse);
  if (match === null) {
    cursor.at = numeral.end;
    return { numeral, unit: null, waveform: null, tolerance: null, refusal: null, start: numeral.start, end: numeral.end };
  }
  const refusal = match.refusal === null ? null : { ...match.refusal, end: match.end };
  cursor.at = match.end;
  const waveform = match.unit === null ? null : readWaveform(cursor, match.unit);
  return { numeral, unit: match.unit, waveform, tolerance: null, refusal, start: numeral.start, end: cursor.at };
}

const ALTERNATING = ['ac', 'a.c', 'rms'];
const DIRECT = ['dc', 'd.c'];

/** "AC", "DC", "~", "⎓", "=" behind a voltage or a current; the tilde only where it opens no range. */
export function readWaveform(cursor: Cursor, unit: Unit): 'AC' | 'DC' | null {
  if (unit.dimension !== 'voltage' && unit.dimension !== 'current') return null;
  const found = unit.waveform ?? readWaveformSign(cursor);
  if (found === null) return null;
  // "VAC/VDC", "V AC/DC": the part takes either.
  const before = cursor.at;
  if (cursor.text.charAt(cursor.at) === '/') {
    cursor.at += 1;
    const other = takeWord(cursor, ['vac', 'vdc', 'ac', 'dc']);
    if (other !== null) return other.endsWith(found.toLowerCase()) ? found : null;
    cursor.at = before;
  }
  return found;
}

function readWaveformSign(cursor: Cursor): 'AC' | 'DC' | null {
  if (takeWord(cursor, ALTERNATING) !== null) return 'AC';
  if (takeWord(cursor, DIRECT) !== null) return 'DC';
  const before = cursor.at;
  skipSpaces(cursor);
  const sign = cursor.text.charAt(cursor.at);
  cursor.at += 1;
  if (sign === '⎓' || sign === '=') return 'DC';
  if (sign === '~' && !opensVoltage(cursor)) return 'AC';
  cursor.at = before;
  return null;
}

/** Whether a voltage stands next: then the tilde before it is a range ("3.3V~5.9V"), else it means alternating ("240V~50/60Hz"). */
function opensVoltage(cursor: Cursor): boolean {
  const before = cursor.at;
  skipSpaces(cursor);
  const numeral = scanNumeral(cursor.text, cursor.at);
  if (numeral === null) {
    cursor.at = before;
    return false;
  }
  cursor.at = numeral.end;
  skipSpaces(cursor);
  const unit = matchUnit(cursor.text, cursor.at, null, false)?.unit ?? null;
  cursor.at = before;
  return unit?.dimension === 'voltage';
}

/** Settles what the comma in "20,100 mAh" means now that the unit is known, and says what was read in an unusual writing. */
export function settledNumeral(cursor: Cursor, numeral: Numeral, unit: Unit): Numeral {
  const written = writtenBetween(cursor, numeral.start, numeral.end);
  const say = (severity: 'note' | 'warning' | 'error', message: string, suggestion: string | null = null): void => {
    remark(cursor, severity, message, numeral.start, numeral.end, suggestion);
  };
  if (numeral.hasExponent) say('note', `exponent accepted: ${written}`);
  if (numeral.isDecimalComma) say('note', `decimal comma: ${written} is read as ${numeral.digits}`, numeral.digits);
  if (numeral.isSpaceGrouped && !countsInThousands(unit)) {
    say(
      'error',
      `“${written} ${unit.symbol}” may be two numbers or one with a space for the thousands`,
      `${numeral.digits} ${unit.symbol}`,
    );
  }
  if (/^\d{1,3}\.000$/.test(numeral.digits) && unit.symbol === 'mAh') {
    say('warning', `${written} mAh is ${Number(numeral.digits)} mAh with a decimal point`, `${numeral.digits.replace('.', '')} mAh`);
  }
  if (numeral.doubt === null || countsInThousands(unit)) return numeral;
  const decimal = asDecimalComma(numeral);
  say(
    'error',
    `“${written} ${unit.symbol}” can be ${numeral.digits} or ${decimal.digits}: write it without the comma`,
    `${numeral.digits} ${unit.symbol}`,
  );
  return numeral;
}
