import { isDigitAt, isLetterAt, isSpaceAt } from './characters.ts';
import { buildQuantity, withNumber } from './build-quantity.ts';
import { remark, skipSpaces, takeSign, takeWord, writtenBetween } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import { readLimitBefore, readLimitBehind } from './limit-words.ts';
import type { Limit } from './limit-words.ts';
import { matchUnit } from './match-unit.ts';
import type { Quantity } from './quantity.ts';
import { readTerm, readWaveform } from './read-term.ts';
import type { Term, Wanted } from './read-term.ts';
import { readTolerance } from './read-tolerance.ts';
import type { WrittenTolerance } from './read-tolerance.ts';
import { refuseUnit } from './refuse-unit.ts';
import { unitOfBareNumber } from './bare-number.ts';
import type { Unit } from './unit.ts';

/** How the numbers of one measure belong together. */
type Joint = 'one' | 'range' | 'triple' | 'list';

interface Terms {
  readonly joint: Joint;
  readonly terms: readonly Term[];
}

/**
 * Reads one written measure with limits, range, tolerance and qualifiers: "≤ 75 mW", "100–240 V~", "68 ± 0.3 mm", "85 / 230 / 265 V".
 * `null`, with the cursor where it was, when no number stands here; an empty list after a remark when it cannot be read.
 * Two numbers with one unit ("50/60 Hz") give two quantities.
 */
export function readMeasure(cursor: Cursor, wanted: Wanted): readonly Quantity[] | null {
  const start = cursor.at;
  const limit = readLimitBefore(cursor);
  skipSpaces(cursor);
  const from = limit === null ? cursor.at : startOfLimit(cursor, start);
  const first = readTerm(cursor, wanted);
  if (first === null) {
    cursor.at = start;
    return null;
  }
  return finish(cursor, wanted, limit, from, gatherTerms(cursor, wanted, first, opensBetween(cursor, from)));
}

function startOfLimit(cursor: Cursor, start: number): number {
  let at = start;
  while (isSpaceAt(cursor.text, at)) at += 1;
  return at;
}

/** "between 5 and 31 V": only there does "and" join the ends of one range. */
function opensBetween(cursor: Cursor, from: number): boolean {
  return cursor.text.slice(from, from + 7).toLowerCase() === 'between';
}

function gatherTerms(cursor: Cursor, wanted: Wanted, first: Term, isBetween: boolean): Terms {
  const range = readRangeEnd(cursor, wanted, first, isBetween ? PAIR_WORDS : RANGE_WORDS);
  if (range !== null) return { joint: 'range', terms: [first, range] };
  const list = readSlashList(cursor, wanted, first);
  if (list === null) return { joint: 'one', terms: [first] };
  const fraction = asFraction(list);
  if (fraction !== null) return { joint: 'one', terms: [fraction] };
  return { joint: isRisingTriple(list) ? 'triple' : 'list', terms: list };
}

const RANGE_WORDS = ['to', 'through', 'until'];
const PAIR_WORDS = [...RANGE_WORDS, 'and'];

/** The upper end behind "–", "~", "…", "to": only where it is of the same kind as the lower one. */
function readRangeEnd(cursor: Cursor, wanted: Wanted, first: Term, words: readonly string[]): Term | null {
  const before = cursor.at;
  if (!'.…~-tTuUaA'.includes(nextSign(cursor)) || nextSign(cursor) === '') return null;
  const isJoined =
    takeSign(cursor, '...') || takeSign(cursor, '..') || takeSign(cursor, '…') || takeSign(cursor, '~') || takeDash(cursor, first);
  const next = isJoined || takeWord(cursor, words) !== null ? readTerm(cursor, wanted) : null;
  if (next !== null && isSameKind(first, next)) return next;
  cursor.at = before;
  return null;
}

/** The next character that is no space, without moving. */
function nextSign(cursor: Cursor): string {
  let at = cursor.at;
  while (isSpaceAt(cursor.text, at)) at += 1;
  return cursor.text.charAt(at);
}

/** A dash, doubled or not. Behind a number below zero the last one before a digit is a minus: "-40--20 °C". */
function takeDash(cursor: Cursor, first: Term): boolean {
  if (!takeSign(cursor, '-')) return false;
  const keepsMinus = first.numeral.sign === '-';
  while (cursor.text.charAt(cursor.at) === '-' && !(keepsMinus && isDigitAt(cursor.text, cursor.at + 1))) cursor.at += 1;
  return true;
}

function isSameKind(first: Term, next: Term): boolean {
  if (first.unit === null) return true;
  return next.unit !== null && next.unit.dimension === first.unit.dimension;
}

/** "50/60 Hz", "90/120/220 VAC": bare numbers before the one that has the unit, or three with the same unit. */
function readSlashList(cursor: Cursor, wanted: Wanted, first: Term): readonly Term[] | null {
  const terms = [first];
  const before = cursor.at;
  let after = before;
  while (terms.length < 8 && takeSign(cursor, '/')) {
    const next = readTerm(cursor, wanted);
    if (next === null || !isSameKind(first, next)) break;
    terms.push(next);
    after = cursor.at;
    if (first.unit === null && next.unit !== null) break;
  }
  cursor.at = after;
  const isTripleOfOneUnit = first.unit !== null && terms.length === 3 && terms.every((term) => term.unit?.symbol === first.unit?.symbol);
  const isListBeforeUnit = first.unit === null && terms.length > 1 && terms.at(-1)?.unit !== null;
  if ((isTripleOfOneUnit && isRisingTriple(terms)) || isListBeforeUnit) return terms;
  cursor.at = before;
  return null;
}

function isRisingTriple(terms: readonly Term[]): boolean {
  const [low, middle, high] = terms.map((term) => Number(`${term.numeral.sign}${term.numeral.digits}e${term.numeral.exponent}`));
  if (terms.length !== 3 || low === undefined || middle === undefined || high === undefined) return false;
  return low <= middle && middle <= high && low < high;
}

/** "1/4 W", "3/4 in": a fraction where resistors and imperial lengths are written so. */
function asFraction(terms: readonly Term[]): Term | null {
  const [over, under] = terms;
  const isFractional = under?.unit?.dimension === 'power' || under?.unit?.symbol === 'in';
  if (over === undefined || under === undefined || terms.length !== 2 || !isFractional) return null;
  const top = Number(over.numeral.digits);
  const bottom = Number(under.numeral.digits);
  if (![2, 4, 8, 16, 32].includes(bottom) || top >= bottom || !Number.isInteger(top) || top <= 0) return null;
  return { ...under, numeral: { ...under.numeral, digits: String(top / bottom), start: over.numeral.start }, start: over.start };
}

function finish(cursor: Cursor, wanted: Wanted, before: Limit | null, from: number, found: Terms): readonly Quantity[] {
  const last = found.terms.at(-1);
  if (last === undefined) return [];
  const isUnitPending = last.unit === null;
  // A limit has no tolerance of its own: in "more than 35 V ±10 %" the percentage is the part's.
  const isLimit = before !== null && before.bound !== null;
  const tolerance = isLimit ? null : readTolerance(cursor, wanted.dimension);
  const unit = last.unit ?? (tolerance === null ? null : unitOfTolerance(cursor, wanted, tolerance)) ?? bareUnit(cursor, wanted, last);
  if (unit === null) return [];
  const waveform = isUnitPending ? readWaveform(cursor, unit) : null;
  const terms = waveform === null ? found.terms : found.terms.map((term) => ({ ...term, waveform }));
  const behind = readLimitBehind(cursor);
  const lateTolerance = tolerance ?? (isUnitPending || isLimit ? null : readTolerance(cursor, wanted.dimension));
  const shape = { limit: merged(before, behind), tolerance: lateTolerance, from, to: cursor.at };
  if (found.joint !== 'list') return present(buildQuantity(cursor, found.joint, terms, unit, shape));
  return found.terms.flatMap((term) =>
    present(buildQuantity(cursor, 'one', [withNumber(term, last)], unit, { ...shape, from: term.start, to: term.end })),
  );
}

function present(quantity: Quantity | null): readonly Quantity[] {
  return quantity === null ? [] : [quantity];
}

/** "24 ± 1 V", "24 ±5 % V": the unit stands behind the tolerance. "92 ± 1 %" is a ratio in percent where a ratio is wanted. */
function unitOfTolerance(cursor: Cursor, wanted: Wanted, written: WrittenTolerance): Unit | null {
  if (written.unit !== null) return written.unit;
  const before = cursor.at;
  skipSpaces(cursor);
  const match = matchUnit(cursor.text, cursor.at, wanted.dimension, wanted.isFuse);
  cursor.at = match?.unit == null ? before : match.end;
  if (match?.unit != null) return match.unit;
  return wanted.dimension === 'ratio' && written.tolerance.kind === 'fraction' ? (matchUnit('%', 0, 'ratio', false)?.unit ?? null) : null;
}

function merged(before: Limit | null, behind: Limit | null): Limit {
  return {
    bound: before?.bound ?? behind?.bound ?? null,
    qualifier: before?.qualifier ?? behind?.qualifier ?? null,
    isApproximate: before?.isApproximate ?? false,
  };
}

/** The unit that the field gives to a number without one; else says that the unit is missing or not known. */
function bareUnit(cursor: Cursor, wanted: Wanted, term: Term): Unit | null {
  let next = term.end;
  while (isSpaceAt(cursor.text, next)) next += 1;
  const isGlued = next === term.end && isLetterAt(cursor.text, next);
  const unit = isGlued || term.refusal !== null ? null : unitOfBareNumber(wanted.bareNumber);
  if (unit === null) {
    refuseUnit(cursor, term, wanted);
    return null;
  }
  if (unit.symbol !== '1') {
    const written = writtenBetween(cursor, term.start, term.end);
    remark(
      cursor,
      'note',
      `unit assumed: “${written}” is read as ${written} ${unit.symbol}`,
      term.start,
      term.end,
      `${written} ${unit.symbol}`,
    );
  }
  return unit;
}
