import { isSpaceAt } from './characters.ts';
import type { Dimension } from './dimension.ts';
import { skipSpaces, takeSign, takeWord } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import { matchUnit } from './match-unit.ts';
import { scanNumeral } from './numeral.ts';
import type { Tolerance } from './tolerance-letter.ts';
import type { Unit } from './unit.ts';

/** A written tolerance; `unit` is null for percent, and the unit written behind an absolute one. */
export interface WrittenTolerance {
  readonly tolerance: Tolerance;
  readonly unit: Unit | null;
}

interface Amount {
  readonly value: number;
  readonly unit: Unit | null;
}

/** Reads "±5 %", "± 0.3 mm", "+/-5%", "+10/-20 %", "-20 % +80 %", "(±10 %)", "tol. 5 %" behind a number; null where none stands. */
export function readTolerance(cursor: Cursor, wanted: Dimension | null): WrittenTolerance | null {
  const start = cursor.at;
  let next = start;
  while (isSpaceAt(cursor.text, next)) next += 1;
  if (!'±+-(tT'.includes(cursor.text.charAt(next)) || next >= cursor.text.length) return null;
  const isBracketed = takeSign(cursor, '(');
  const isNamed = takeWord(cursor, ['tolerance', 'tol']) !== null;
  const read = readSymmetric(cursor, wanted) ?? readTwoSided(cursor, wanted) ?? (isNamed ? symmetric(readAmount(cursor, wanted)) : null);
  if (read !== null && (!isBracketed || takeSign(cursor, ')'))) return read;
  cursor.at = start;
  return null;
}

function readSymmetric(cursor: Cursor, wanted: Dimension | null): WrittenTolerance | null {
  const start = cursor.at;
  const isSigned = takeSign(cursor, '±') || takeSign(cursor, '+/-') || takeSign(cursor, '+-') || takeSign(cursor, '-/+');
  const read = isSigned ? symmetric(readAmount(cursor, wanted)) : null;
  if (read === null) cursor.at = start;
  return read;
}

function symmetric(amount: Amount | null): WrittenTolerance | null {
  return amount === null ? null : toleranceBetween(amount, amount);
}

/** One side with its sign, then the other: the percent sign may stand behind the second only. */
function readTwoSided(cursor: Cursor, wanted: Dimension | null): WrittenTolerance | null {
  const start = cursor.at;
  const first = readSide(cursor, wanted);
  if (first !== null) {
    if (!takeSign(cursor, '/')) takeSign(cursor, ',');
    const second = readSide(cursor, wanted);
    if (second !== null && first.sign !== second.sign) {
      const unit = second.amount.unit ?? first.amount.unit;
      const sides = [first, second].map((side) => ({ ...side.amount, unit: side.amount.unit ?? unit }));
      const [one, other] = first.sign === '-' ? sides : sides.reverse();
      if (one !== undefined && other !== undefined) return toleranceBetween(one, other);
    }
  }
  cursor.at = start;
  return null;
}

function readSide(cursor: Cursor, wanted: Dimension | null): { sign: '+' | '-'; amount: Amount } | null {
  const sign = takeSign(cursor, '+') ? '+' : takeSign(cursor, '-') ? '-' : null;
  const amount = sign === null ? null : readAmount(cursor, wanted);
  return sign === null || amount === null ? null : { sign, amount };
}

function readAmount(cursor: Cursor, wanted: Dimension | null): Amount | null {
  skipSpaces(cursor);
  const numeral = scanNumeral(cursor.text, cursor.at);
  if (numeral === null || numeral.sign === '-') return null;
  cursor.at = numeral.end;
  const before = cursor.at;
  skipSpaces(cursor);
  const unit = matchUnit(cursor.text, cursor.at, wanted, false);
  cursor.at = unit === null ? before : unit.end;
  return { value: Number(`${numeral.digits}e${numeral.exponent}`), unit: unit?.unit ?? null };
}

function toleranceBetween(below: Amount, above: Amount): WrittenTolerance | null {
  const isFraction = below.unit?.dimension === 'ratio' && above.unit?.dimension === 'ratio';
  if (isFraction) {
    const [low, high] = [below, above].map((side) => side.value * 10 ** (side.unit?.exponent ?? 0));
    return { tolerance: { kind: 'fraction', below: low ?? 0, above: high ?? 0 }, unit: null };
  }
  if (below.unit?.dimension === 'ratio' || above.unit?.dimension === 'ratio') return null;
  return { tolerance: { kind: 'absolute', below: below.value, above: above.value }, unit: above.unit };
}
