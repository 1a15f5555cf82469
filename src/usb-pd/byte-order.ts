import { remark } from '../units/cursor.ts';
import type { Cursor } from '../units/cursor.ts';
import { decodeObject } from './power-data-object.ts';
import type { PlacedWord } from './word-places.ts';

/** An order in which a program may have printed the bytes of a word. */
interface ByteOrder {
  readonly name: string;
  readonly restore: (word: number) => number;
}

const ORDERS: readonly ByteOrder[] = [
  { name: 'lowest byte first', restore: bytesReversed },
  { name: 'lower half first', restore: (word) => ((word << 16) | (word >>> 16)) >>> 0 },
  { name: 'bytes swapped in each half', restore: (word) => bytesReversed(((word << 16) | (word >>> 16)) >>> 0) },
];

export function bytesReversed(word: number): number {
  return (((word & 0xff) << 24) | ((word & 0xff00) << 8) | ((word >>> 8) & 0xff00) | (word >>> 24)) >>> 0;
}

/** A 5 V fixed supply with a likely current and nothing in its reserved bit: the first object of every source. */
export function opensList(word: number): boolean {
  const object = decodeObject(word);
  return (
    object.kind === 'fixed' && object.voltage_mV === 5000 && object.current_mA > 0 && object.current_mA <= 5000 && object.reserved22 === 0
  );
}

/**
 * Asks whether the words are printed with their bytes in another order: where the first is no 5 V supply as it stands and is one the other
 * way round. Nothing is turned round unasked: a list may begin in its middle.
 */
export function askByteOrder(cursor: Cursor, words: readonly PlacedWord[]): void {
  const [first] = words;
  const last = words.at(-1);
  if (first === undefined || last === undefined || opensList(first.word)) return;
  const order = ORDERS.find(({ restore }) => opensList(restore(first.word)));
  if (order === undefined) return;
  const restored = words.map(({ word }) => hexWord(order.restore(word))).join(' ');
  const message = `the first word is no 5 V supply as it stands, and is one with ${order.name}: are these words printed so?`;
  remark(cursor, 'error', message, first.start, last.end, restored);
}

/** A word as testers print it: 0x, eight hex digits. */
export function hexWord(word: number): string {
  return `0x${word.toString(16).toUpperCase().padStart(8, '0')}`;
}
