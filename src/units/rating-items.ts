import { isDigitAt, isLetterAt, isSpaceAt, isWordAt } from './characters.ts';
import { hasErrors, isAtEnd, refuseRest, remark, spanBetween, takeSign, takeWaveformPrefix, writtenBetween } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import type { Dimension } from './dimension.ts';
import { readBreakingCapacity, readFuseSpeed, readFuseSpeedBehind } from './fuse-marking.ts';
import { readLabel } from './label.ts';
import { withLateTolerance, withToleranceLetter } from './late-tolerance.ts';
import { readLooseTolerance, withPending } from './loose-tolerance.ts';
import { readNumericItem } from './numeric-item.ts';
import type { Quantity } from './quantity.ts';
import { addMark } from './rating-found.ts';
import type { RatingItems } from './rating-found.ts';
import { markOfWord } from './rating-mark.ts';
import { readCount } from './read-count.ts';
import { readMeasure } from './read-measure.ts';
import { agreeing, isImperial, opensWithUnit } from './read-quantity.ts';
import { readTurns } from './read-turns.ts';

const SEPARATORS = ' \u00A0,/;·|()[]&@-⎓.:⌀';

/** Reads item after item until the text is used up or something is refused. */
export function readRatingItems(cursor: Cursor, bareNumber: Dimension | null): RatingItems {
  const items: RatingItems = { count: 1, quantities: [], marks: [], turns: [], pending: null };
  while (!hasErrors(cursor.remarks)) {
    const isSeparate = skipSeparators(cursor) || cursor.at === 0;
    if (isAtEnd(cursor)) break;
    const before = cursor.at;
    const isRead = readItem(cursor, items, bareNumber, isSeparate);
    if (!isRead || cursor.at === before) {
      if (!hasErrors(cursor.remarks)) refuseItem(cursor);
      break;
    }
  }
  if (items.pending !== null && !hasErrors(cursor.remarks)) {
    const { start, end } = items.pending;
    remark(cursor, 'error', `“${writtenBetween(cursor, start, end)}” is a tolerance without its value`, start, end);
  }
  return items;
}

function skipSeparators(cursor: Cursor): boolean {
  const before = cursor.at;
  while (!isAtEnd(cursor) && SEPARATORS.includes(cursor.text.charAt(cursor.at))) {
    // A point or a minus that opens a number belongs to it.
    const sign = cursor.text.charAt(cursor.at);
    if (sign === '.' && isDigitAt(cursor.text, cursor.at + 1)) break;
    if (sign === '-' && isDigitAt(cursor.text, cursor.at + 1) && (cursor.at === 0 || isSpaceAt(cursor.text, cursor.at - 1))) break;
    cursor.at += 1;
  }
  return cursor.at > before;
}

function refuseItem(cursor: Cursor): void {
  if (takeSign(cursor, '+')) {
    cursor.at -= 1;
    refuseRest(cursor, '“+” joins parts that differ; give each its own line');
    return;
  }
  if (opensWithUnit(cursor.text, cursor.at)) {
    remark(cursor, 'error', 'the number must come first, then its unit', cursor.at, cursor.text.length);
    return;
  }
  refuseRest(cursor, 'it is no quantity, mark or word of a rating');
}

function readItem(cursor: Cursor, items: RatingItems, bareNumber: Dimension | null, isSeparate: boolean): boolean {
  if (readFuseLetters(cursor, items, isSeparate)) return true;
  if (isSeparate && isDigitAt(cursor.text, cursor.at) && readNumericItem(cursor, items, bareNumber)) return true;
  const count = readCount(cursor, isSeparate);
  if (count !== null) {
    items.count *= count;
    return true;
  }
  if (!isSeparate && isLetterAt(cursor.text, cursor.at) && !isConditionWord(cursor)) return false;
  if (readLooseTolerance(cursor, items)) return true;
  if (readMeasures(cursor, items, bareNumber, null)) return true;
  return readNamedMeasure(cursor, items, bareNumber) || readWordItem(cursor, items);
}

function isConditionWord(cursor: Cursor): boolean {
  // A quantity may close with a sign ("5 V⎓3 A", "250V~X2"): what follows a sign is not glued to a letter.
  return cursor.at > 0 && !isWordAt(cursor.text, cursor.at - 1);
}

function readFuseLetters(cursor: Cursor, items: RatingItems, isSeparate: boolean): boolean {
  const last = items.quantities.at(-1);
  const capacity = !isSeparate && last?.dimension === 'current' ? readBreakingCapacity(cursor.text, cursor.at) : null;
  if (capacity !== null) return addMark(cursor, items, 'breaking capacity', capacity, cursor.at + 1);
  const isFuse = items.marks.some((entry) => entry.kind === 'fuse speed');
  const spaced = isFuse && isSeparate && last?.dimension === 'current' ? readBreakingCapacity(cursor.text, cursor.at) : null;
  if (spaced !== null) return addMark(cursor, items, 'breaking capacity', spaced, cursor.at + 1);
  const behind = isFuse || last?.dimension !== 'current' ? null : readFuseSpeedBehind(cursor.text, cursor.at);
  if (behind !== null) return addMark(cursor, items, 'fuse speed', behind, cursor.at + behind.length);
  const isFirst = items.quantities.length === 0 && items.marks.length === 0;
  const speed = isFirst && isSeparate ? readFuseSpeed(cursor.text, cursor.at) : null;
  return speed === null ? false : addMark(cursor, items, 'fuse speed', speed.speed, speed.end);
}

function readMeasures(cursor: Cursor, items: RatingItems, bareNumber: Dimension | null, label: string | null): boolean {
  const isFuse = items.marks.some((entry) => entry.kind === 'fuse speed');
  const isCondition = isBehindAt(cursor);
  const joiner = cursor.text.slice(0, cursor.at).trimEnd().at(-1) ?? '';
  const found = readMeasure(cursor, { dimension: bareNumber, bareNumber, isFuse });
  if (found === null) return false;
  for (const quantity of found) {
    const named = label ?? (isCondition ? 'at' : null);
    addQuantity(cursor, items, named === null ? quantity : { ...quantity, label: named }, joiner);
  }
  return found.length > 0;
}

function isBehindAt(cursor: Cursor): boolean {
  const before = cursor.text.slice(0, cursor.at).trimEnd();
  return before.endsWith('@') || before.endsWith(' at');
}

function addQuantity(cursor: Cursor, items: RatingItems, quantity: Quantity, joiner: string): void {
  const last = items.quantities.at(-1);
  const isSecondWriting =
    last !== undefined &&
    last.dimension === quantity.dimension &&
    isImperial(last.unit) !== isImperial(quantity.unit) &&
    '/(='.includes(joiner) &&
    joiner !== '';
  const toleranced = last === undefined ? null : (withLateTolerance(cursor, last, quantity) ?? withLateTolerance(cursor, quantity, last));
  if (isSecondWriting) items.quantities[items.quantities.length - 1] = agreeing(cursor, last, quantity);
  else if (toleranced !== null) items.quantities[items.quantities.length - 1] = toleranced;
  else items.quantities.push(withPending(items, quantity));
}

/** "RDS(on) = 0.04 Ω", "ESR 12 mΩ", "AC 250 V". */
function readNamedMeasure(cursor: Cursor, items: RatingItems, bareNumber: Dimension | null): boolean {
  const start = cursor.at;
  const waveform = takeWaveformPrefix(cursor);
  const label = waveform === null ? readLabel(cursor) : null;
  const turns = label === null ? null : readTurns(cursor);
  if (turns !== null) {
    items.turns = turns;
    return true;
  }
  const from = items.quantities.length;
  if ((waveform === null && label === null) || !readMeasures(cursor, items, bareNumber, label)) {
    if (!hasErrors(cursor.remarks)) cursor.at = start;
    return false;
  }
  if (waveform === null) return true;
  items.quantities = items.quantities.map((quantity, index) =>
    index >= from && quantity.waveform === null && (quantity.dimension === 'voltage' || quantity.dimension === 'current')
      ? { ...quantity, waveform }
      : quantity,
  );
  return true;
}

function readWordItem(cursor: Cursor, items: RatingItems): boolean {
  const start = cursor.at;
  if (!isLetterAt(cursor.text, start) || opensWithUnit(cursor.text, start)) return false;
  let end = start;
  while (isWordAt(cursor.text, end) || ('-._+'.includes(cursor.text.charAt(end)) && end > start && isWordAt(cursor.text, end + 1)))
    end += 1;
  const word = cursor.text.slice(start, end);
  const last = items.quantities.at(-1);
  const toleranced = last === undefined ? null : withToleranceLetter(cursor, last, word);
  if (toleranced !== null) items.quantities[items.quantities.length - 1] = toleranced;
  const meaning = toleranced === null ? markOfWord(word) : null;
  if (meaning !== null) items.marks.push({ ...meaning, span: spanBetween(cursor, start, end) });
  cursor.at = end;
  return true;
}
