import { remark } from '../units/cursor.ts';
import type { Cursor } from '../units/cursor.ts';
import { bytesReversed, hexWord, opensList } from './byte-order.ts';
import type { PlacedWord } from './word-places.ts';

interface Group {
  readonly digits: string;
  readonly start: number;
  readonly end: number;
}

const WORD_DIGITS = 8;
/** A message header goes before the objects on the wire: two bytes. */
const HEADER_BYTES = 2;

/**
 * Words of a dump that groups its digits otherwise than in words: single bytes as they go over the wire ("2C 91 01 0A"), or 64-bit numbers
 * that hold two words each, the earlier one in the lower half, leading zeros left out. Null where the text is no such dump, or where no
 * reading of it begins with a 5 V supply, so that ordinary text is never taken for digits.
 */
export function readPastedDump(cursor: Cursor): readonly PlacedWord[] | null {
  const groups = groupsOf(cursor.text);
  if (groups === null) return null;
  if (groups.every(({ digits }) => digits.length === 2)) return fromBytes(cursor, groups);
  return groups.some(({ digits }) => digits.length > WORD_DIGITS) ? fromDoubleWords(cursor, groups) : null;
}

/** Groups of hex digits and nothing else but signs between them; null for any other text. */
function groupsOf(text: string): readonly Group[] | null {
  if (!/^[\s,;:|_[\](){}\-0-9a-fx]+$/i.test(text)) return null;
  const groups = [...text.matchAll(/(?:0x)?([0-9a-f]+)/gi)].map((match): Group => {
    return { digits: match[1] ?? '', start: match.index, end: match.index + match[0].length };
  });
  return groups.length === 0 || groups.some(({ digits }) => digits.length > 2 * WORD_DIGITS) ? null : groups;
}

function fromBytes(cursor: Cursor, groups: readonly Group[]): readonly PlacedWord[] | null {
  for (const skip of [0, HEADER_BYTES]) {
    const rest = groups.slice(skip);
    if (rest.length === 0 || rest.length % 4 !== 0) continue;
    const asPrinted = wordsOfBytes(rest);
    const words = [asPrinted.map(({ word, ...place }) => ({ ...place, word: bytesReversed(word) })), asPrinted].find(([first]) =>
      opensList(first?.word ?? 0),
    );
    if (words === undefined) continue;
    const order = words === asPrinted ? 'highest byte first' : 'lowest byte first, as they go over the wire';
    const header = skip === 0 ? '' : `, behind a header of ${HEADER_BYTES} bytes`;
    say(cursor, groups, `read as bytes, ${order}${header}`, words);
    return words;
  }
  return null;
}

function wordsOfBytes(groups: readonly Group[]): readonly PlacedWord[] {
  return groups.flatMap((group, index) => {
    const four = groups.slice(index, index + 4);
    if (index % 4 !== 0) return [];
    return [
      { word: Number.parseInt(four.map(({ digits }) => digits).join(''), 16), start: group.start, end: four.at(-1)?.end ?? group.end },
    ];
  });
}

function fromDoubleWords(cursor: Cursor, groups: readonly Group[]): readonly PlacedWord[] | null {
  const inOrder = [groups, groups.toReversed()].map((several) => several.flatMap(halvesOf)).find(([first]) => opensList(first?.word ?? 0));
  if (inOrder === undefined) return null;
  const isReversed = inOrder[0]?.start !== groups[0]?.start && groups.length > 1;
  say(
    cursor,
    groups,
    `read as 64-bit numbers of two words each, the lower half first${isReversed ? ' and the last number first' : ''}`,
    inOrder,
  );
  return inOrder;
}

/** Lower half first. A number of eight digits or less has nothing in its upper half. */
function halvesOf({ digits, start, end }: Group): readonly PlacedWord[] {
  const lower = { word: Number.parseInt(digits.slice(-WORD_DIGITS), 16), start, end };
  return digits.length <= WORD_DIGITS ? [lower] : [lower, { word: Number.parseInt(digits.slice(0, -WORD_DIGITS), 16), start, end }];
}

function say(cursor: Cursor, groups: readonly Group[], how: string, words: readonly PlacedWord[]): void {
  const [first] = groups;
  const last = groups.at(-1);
  if (first === undefined || last === undefined) return;
  remark(cursor, 'note', how, first.start, last.end, words.map(({ word }) => hexWord(word)).join(' '));
}
