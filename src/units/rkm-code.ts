import { isDigitAt, isLetterAt, endOfDigits } from './characters.ts';
import type { Dimension } from './dimension.ts';
import { chosenTolerance } from './tolerance-letter.ts';
import type { Tolerance } from './tolerance-letter.ts';
import { UNIT_SPELLINGS } from './unit-table.ts';
import type { Unit } from './unit.ts';

/**
 * A value in the letter notation of IEC 60062: the letter stands for the decimal point and the prefix (4k7, R10, 4n7, 2u2).
 * Examples: https://en.wikipedia.org/wiki/IEC/EN_60062; capacitor letters and L for milli-ohm are from memory of the standard.
 */
export interface RkmCode {
  /** Decimal number, such as "4.7". */
  readonly digits: string;
  readonly unit: Unit;
  readonly tolerance: Tolerance | null;
  readonly end: number;
}

const RESISTANCE_LETTERS: Readonly<Record<string, string>> = { R: 'Ω', r: 'Ω', k: 'kΩ', K: 'kΩ', M: 'MΩ', G: 'GΩ', L: 'mΩ', m: 'mΩ' };
const SMALL_LETTERS: Readonly<Record<string, string>> = { p: 'p', P: 'p', n: 'n', N: 'n', u: 'µ', U: 'µ', µ: 'µ' };
/** Letters that can open a code: "R47" anywhere, "p47" in a capacitor row; the others would open words. */
const OPENING = 'Rr';
const OPENING_SMALL = 'pnuµ';

/** Reads a code whose letter stands between digits or before them; "47k" and "100n" are numbers with a bare prefix, not codes. */
export function readRkmCode(text: string, index: number, wanted: Dimension | null): RkmCode | null {
  const letterAt = endOfDigits(text, index);
  const letter = text.charAt(letterAt);
  const whole = text.slice(index, letterAt);
  if (!isDigitAt(text, letterAt + 1) || (whole === '' && !opensCode(letter, wanted))) return null;
  const symbol = unitSymbol(letter, wanted);
  if (symbol === null || whole.length > 4) return null;
  const end = endOfDigits(text, letterAt + 1);
  if (end - letterAt > 4 || (text.charAt(end) === '.' && isDigitAt(text, end + 1))) return null;
  const unit = UNIT_SPELLINGS.get(symbol)?.[0];
  if (unit === undefined) return null;
  return closed(text, end, { digits: `${whole === '' ? '0' : whole}.${text.slice(letterAt + 1, end)}`, unit, tolerance: null, end });
}

function opensCode(letter: string, wanted: Dimension | null): boolean {
  if (letter === '') return false;
  return OPENING.includes(letter) || ((wanted === 'capacitance' || wanted === 'inductance') && OPENING_SMALL.includes(letter));
}

function unitSymbol(letter: string, wanted: Dimension | null): string | null {
  const small = SMALL_LETTERS[letter];
  if (small !== undefined) return small + (wanted === 'inductance' ? 'H' : 'F');
  const resistance = RESISTANCE_LETTERS[letter];
  if (resistance === undefined) return null;
  if (letter === 'm' && wanted === 'inductance') return 'mH';
  return letter === 'm' && wanted !== 'resistance' ? null : resistance;
}

/** After the digits: nothing, the base unit ("2u2F", "4k7Ω"), or a tolerance letter ("4k7J"). */
function closed(text: string, end: number, code: RkmCode): RkmCode | null {
  if (!isLetterAt(text, end)) return code;
  const base = code.unit.symbol.slice(-1);
  for (const spelling of base === 'Ω' ? ['Ω', 'ohms', 'ohm', 'Ohm'] : [base]) {
    if (text.startsWith(spelling, end) && !isLetterAt(text, end + spelling.length)) return { ...code, end: end + spelling.length };
  }
  // "4n7H" is an inductance whatever was wanted.
  if (text.charAt(end) === 'H' && base === 'F' && !isLetterAt(text, end + 1)) return asInductance(code, end + 1);
  const tolerance = isLetterAt(text, end + 1) ? null : chosenTolerance(text.charAt(end), code.unit, Number(code.digits));
  // Anything else is left to be quoted as left over: "4R7x9".
  return tolerance === null ? code : { ...code, tolerance, end: end + 1 };
}

function asInductance(code: RkmCode, end: number): RkmCode | null {
  const unit = UNIT_SPELLINGS.get(code.unit.symbol.replace('F', 'H'))?.[0];
  return unit === undefined ? null : { ...code, unit, end };
}
