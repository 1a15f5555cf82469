import { isDigitAt, isLetterAt, isSpaceAt } from './characters.ts';
import { buildQuantity } from './build-quantity.ts';
import { hasErrors, remark, skipSpaces, takeSign, takeWord, writtenBetween } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import { dimensionSlip } from './dimension-slip.ts';
import type { Quantity } from './quantity.ts';
import { readLimitBehind } from './limit-words.ts';
import { readTerm } from './read-term.ts';
import type { Term } from './read-term.ts';
import { readTolerance } from './read-tolerance.ts';
import type { WrittenTolerance } from './read-tolerance.ts';
import { refuseUnit } from './refuse-unit.ts';
import type { Unit } from './unit.ts';

/** The lengths of one writing of a size, in the order written; `diameterAt` is the index of the one marked as diameter. */
export interface Edges {
  readonly lengths: readonly Quantity<'length'>[];
  readonly diameterAt: number | null;
}

interface WrittenEdge {
  readonly term: Term;
  readonly tolerance: WrittenTolerance | null;
  readonly end: number;
}

const WANTED = { dimension: 'length', bareNumber: null, isFuse: false } as const;
const NO_LIMIT = { bound: null, qualifier: null, isApproximate: false } as const;

/** Reads up to three lengths with their separators, units and tolerance; null after a remark where none stands. */
export function readEdges(cursor: Cursor): Edges | null {
  const written: WrittenEdge[] = [];
  let diameterAt: number | null = null;
  do {
    if (readEdgeMark(cursor)) diameterAt = written.length;
    const edge = readEdge(cursor);
    if (edge === null) break;
    written.push(edge);
    if (readEdgeName(cursor)) diameterAt = written.length - 1;
  } while (written.length < 3 && takeSeparator(cursor));
  readSuffix(cursor);
  const last = written.at(-1);
  if (last === undefined) {
    skipSpaces(cursor);
    const tail = writtenBetween(cursor, cursor.at, cursor.text.length);
    remark(
      cursor,
      'error',
      `number missing before “${tail}”: a size is lengths with ×, such as 68 × 52 × 29 mm`,
      cursor.at,
      cursor.text.length,
    );
    return null;
  }
  return { lengths: asLengths(cursor, written, last), diameterAt };
}

const EDGE_WORDS = ['length', 'width', 'height', 'depth'];
/** A comma separates only before a named edge: "⌀12.5 mm, height 25 mm". */
const NAMED_EDGE = /^,\s*(?:length|width|height|depth|[LWHD]\s*\d)/i;

/** "⌀", "dia", or an edge letter such as "L" right before the number; true for a diameter. */
function readEdgeMark(cursor: Cursor): boolean {
  skipSpaces(cursor);
  if (takeSign(cursor, '⌀') || takeWord(cursor, ['diameter', 'dia']) !== null) return true;
  if (takeWord(cursor, EDGE_WORDS) !== null) takeSign(cursor, ':');
  skipSpaces(cursor);
  const letter = cursor.text.charAt(cursor.at);
  let next = cursor.at + 1;
  while (isSpaceAt(cursor.text, next) || '=:'.includes(cursor.text.charAt(next) || ' .')) next += 1;
  if (letter !== '' && 'LWHDTlwhdt'.includes(letter) && isDigitAt(cursor.text, next)) cursor.at = next;
  return false;
}

function readEdge(cursor: Cursor): WrittenEdge | null {
  const term = readTerm(cursor, WANTED);
  if (term === null) return null;
  const tolerance = readTolerance(cursor, 'length');
  return { term, tolerance, end: cursor.at };
}

/** "(L)", "L" or "dia" behind a number; true for a diameter. */
function readEdgeName(cursor: Cursor): boolean {
  const before = cursor.at;
  const isBracketed = takeSign(cursor, '(');
  if (takeSign(cursor, '⌀') || takeWord(cursor, ['diameter', 'dia']) !== null) {
    if (isBracketed) takeSign(cursor, ')');
    return true;
  }
  const isNamed =
    takeWord(cursor, ['l', 'w', 'h', 'd', 't', 'length', 'width', 'height', 'depth', 'long', 'wide', 'high', 'deep']) !== null;
  if (!isNamed || (isBracketed && !takeSign(cursor, ')'))) cursor.at = before;
  return false;
}

/** Signs between edges: ×, x, *, ·, by, a dash, a slash. Unmoved where no number follows. */
function takeSeparator(cursor: Cursor): boolean {
  const before = cursor.at;
  skipSpaces(cursor);
  const sign = cursor.text.charAt(cursor.at);
  const isNamed = NAMED_EDGE.test(cursor.text.slice(cursor.at, cursor.at + 16));
  if (isNamed || (sign !== '' && '×xX*·-/'.includes(sign))) cursor.at += 1;
  else if (takeWord(cursor, ['by']) === null) return false;
  skipSpaces(cursor);
  const opens = isDigitAt(cursor.text, cursor.at) || '.⌀LWHDTlwhdt'.includes(cursor.text.charAt(cursor.at) || ' ');
  // A slash before a bracket-less second writing ("… mm / 2.7 in") stands behind a unit and is left to the caller.
  const isSecondWriting = sign === '/' && before > 0 && isLetterAt(cursor.text, before - 1);
  if (opens && !isSecondWriting) return true;
  cursor.at = before;
  return false;
}

const ORDER = /^\s*\(?\s*[LWHDT]\s*[x×*/]\s*[LWHDT](?:\s*[x×*/]\s*[LWHDT])?\s*\)?/i;

/** "(L × W × H)" or "max" behind everything. */
function readSuffix(cursor: Cursor): void {
  readLimitBehind(cursor);
  const order = ORDER.exec(cursor.text.slice(cursor.at, cursor.at + 24));
  if (order !== null && !isLetterAt(cursor.text, cursor.at + order[0].length)) cursor.at += order[0].length;
}

function asLengths(cursor: Cursor, written: readonly WrittenEdge[], last: WrittenEdge): Quantity<'length'>[] {
  const lastUnit = last.term.unit ?? last.tolerance?.unit ?? null;
  if (lastUnit === null) {
    refuseMissingUnit(cursor, written, last);
    return [];
  }
  const isToleranceForAll = written.slice(0, -1).every((edge) => edge.tolerance === null);
  return written.flatMap((edge, index) => {
    const unit = edge.term.unit ?? unitBehind(written, index) ?? lastUnit;
    const tolerance = edge.tolerance ?? (isToleranceForAll ? last.tolerance : null);
    const shape = { limit: NO_LIMIT, tolerance, from: edge.term.start, to: edge.end };
    const quantity = buildQuantity(cursor, 'one', [{ ...edge.term, unit }], unit, shape);
    return quantity === null ? [] : checkedLength(cursor, quantity);
  });
}

/** The unit of the next edge that has one: "2.7 × 2.0 × 1.1 in". */
function unitBehind(written: readonly WrittenEdge[], index: number): Unit | null {
  return written.slice(index + 1).find((edge) => edge.term.unit !== null)?.term.unit ?? null;
}

function refuseMissingUnit(cursor: Cursor, written: readonly WrittenEdge[], last: WrittenEdge): void {
  if (last.term.refusal !== null || isLetterAt(cursor.text, cursor.at)) {
    refuseUnit(cursor, last.term, WANTED);
    return;
  }
  const start = written[0]?.term.start ?? 0;
  const all = writtenBetween(cursor, start, last.term.end);
  remark(cursor, 'error', `unit missing after “${all}”: a size is in mm, cm or in`, start, last.term.end, `${all} mm`);
}

function checkedLength(cursor: Cursor, quantity: Quantity): Quantity<'length'>[] {
  if (isLength(quantity) && quantity.nominal > 0) return [quantity];
  const slip = isLength(quantity)
    ? { message: `${quantity.written}: an edge is longer than zero`, suggestion: null }
    : dimensionSlip(quantity, 'length', 'an edge', 'mm, cm or in');
  if (!hasErrors(cursor.remarks)) cursor.remarks.push({ severity: 'error', ...slip, span: quantity.span });
  return [];
}

function isLength(quantity: Quantity): quantity is Quantity<'length'> {
  return quantity.dimension === 'length';
}
