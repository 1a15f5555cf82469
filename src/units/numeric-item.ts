import { isSpaceAt, isWordAt } from './characters.ts';
import { readCountedNoun } from './counted-noun.ts';
import type { Cursor } from './cursor.ts';
import { readCapacitorCode } from './digit-code.ts';
import type { Dimension } from './dimension.ts';
import { quantityOfCapacitorCode } from './quantity-of-code.ts';
import { addMark } from './rating-found.ts';
import type { RatingItems } from './rating-found.ts';
import { readEdgeList } from './read-edge-list.ts';
import { readTurns } from './read-turns.ts';

/** Chip sizes in hundredths of an inch, as parts lists put them behind a rating. */
const CHIP_SIZES: ReadonlySet<string> = new Set(
  '0201 0402 0603 0805 1206 1210 1218 1808 1812 1825 2010 2220 2225 2512 2728 3920'.split(' '),
);
const CELLS = /^\d{1,2}S(\d{1,2}P)?$/;

/** Digits that are no quantity: markings, chip sizes, cells in series, turns, edges of a can. */
export function readNumericItem(cursor: Cursor, items: RatingItems, bareNumber: Dimension | null): boolean {
  const start = cursor.at;
  let end = start;
  while (isWordAt(cursor.text, end)) end += 1;
  const word = cursor.text.slice(start, end);
  if (items.quantities.length > 0 && CHIP_SIZES.has(word) && !unitFollows(cursor, end)) return addMark(cursor, items, 'word', word, end);
  if (CELLS.test(word)) return addMark(cursor, items, 'word', word, end);
  const noun = readCountedNoun(cursor.text, start);
  if (noun !== null) return addMark(cursor, items, 'word', noun, start + noun.length);
  const code = isCapacitorMarking(word, bareNumber) ? readCapacitorCode(word) : null;
  if (code !== null) {
    items.quantities.push(quantityOfCapacitorCode(cursor, code, start, word.length));
    cursor.at = end;
    return true;
  }
  const turns = readTurns(cursor);
  if (turns !== null) {
    items.turns = turns;
    return true;
  }
  const edges = readEdgeList(cursor);
  if (edges === null) return false;
  items.quantities.push(...edges);
  return true;
}

function unitFollows(cursor: Cursor, end: number): boolean {
  let next = end;
  while (isSpaceAt(cursor.text, next)) next += 1;
  return next > end && /^(?:[pnµumkM]?[FHΩVAW]|h|hours|[mkM]?ohms?)(?![A-Za-z])/.test(cursor.text.slice(next, next + 8));
}

/** "104K" where no resistor is meant: three digits and a tolerance letter glued to them. */
function isCapacitorMarking(word: string, bareNumber: Dimension | null): boolean {
  if (bareNumber === 'capacitance') return /^\d{3}[A-Z]$/.test(word);
  return bareNumber === null && /^\d\d[0-7][JKMZ]$/.test(word);
}
