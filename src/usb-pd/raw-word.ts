import { isWordAt } from '../units/characters.ts';
import { remark } from '../units/cursor.ts';
import type { Cursor } from '../units/cursor.ts';

const DIGITS = 8;

function endOfRun(text: string, start: number): number {
  let end = start;
  while (isWordAt(text, end) || (text.charAt(end) === '_' && isWordAt(text, end + 1))) end += 1;
  return end;
}

function isHex(text: string): boolean {
  return /^[0-9a-f]+$/i.test(text);
}

/**
 * Reads a 32-bit word as testers print it: `0x0A01912C` with leading zeros dropped or not, eight hex digits without 0x, or two groups
 * of four ("0A01 912C"). Null and unmoved where none stands; undefined after an error about one that cannot be read.
 */
export function readRawWord(cursor: Cursor): number | null | undefined {
  const { text } = cursor;
  const start = cursor.at;
  const isMarked = /^0x/i.test(text.slice(start, start + 2));
  const from = isMarked ? start + 2 : start;
  const end = endOfRun(text, from);
  const run = text.slice(from, end).replaceAll('_', '');
  const group = groupAfter(text, end);
  if (run.length === 4 && isHex(run) && group !== null && (isMarked || opensWord(run + group))) {
    cursor.at = end + 5;
    return Number.parseInt(run + group, 16);
  }
  if (!isMarked && (run.length !== DIGITS || !isHex(run))) return null;
  cursor.at = end;
  if (isHex(run) && run.length <= DIGITS) return Number.parseInt(run, 16);
  refuseWord(cursor, run, start, end);
  return undefined;
}

/** Four more hex digits behind one space. */
function groupAfter(text: string, end: number): string | null {
  const group = text.slice(end + 1, end + 5);
  const isGroup =
    (text.charAt(end) === ' ' || text.charAt(end) === '\u00A0') && group.length === 4 && isHex(group) && !isWordAt(text, end + 5);
  return isGroup ? group : null;
}

/** Decimal digits in both groups could be two numbers, unless the first starts with zero as no number does. */
function opensWord(digits: string): boolean {
  return /[a-f]/i.test(digits) || digits.startsWith('0');
}

function refuseWord(cursor: Cursor, run: string, start: number, end: number): void {
  const written = cursor.text.slice(start, end);
  const refuse = (why: string, suggestion: string | null = null): void => {
    remark(cursor, 'error', `“${written}” ${why}`, start, end, suggestion);
  };
  if (run === '') {
    refuse('is no word: hex digits are missing behind 0x');
    return;
  }
  const odd = /[^0-9a-f]/i.exec(run)?.[0];
  if (odd !== undefined) {
    refuse(`is no 32-bit word: “${odd}” is no hex digit`);
    return;
  }
  const isDouble = run.length > DIGITS && run.length <= 2 * DIGITS;
  // A 64-bit print holds the first object in its lower half.
  const halves = isDouble ? `0x${run.slice(-DIGITS)} 0x${run.slice(0, -DIGITS)}, if this is two words in one 64-bit number` : null;
  refuse(`has ${run.length} hex digits; a 32-bit word has at most ${DIGITS}`, halves);
}
