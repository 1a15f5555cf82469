import { isDigitAt, isSpaceAt } from './characters.ts';
import type { Cursor } from './cursor.ts';
import { scanNumeral } from './numeral.ts';

/** Reads the turns of windings, "34:4:4" or "22 : 4 : 5 : 13": two numbers or more. Null and unmoved otherwise. */
export function readTurns(cursor: Cursor): readonly number[] | null {
  if (!cursor.text.includes(':', cursor.at)) return null;
  const turns: number[] = [];
  let at = cursor.at;
  for (;;) {
    const numeral = scanNumeral(cursor.text, at);
    if (numeral === null || numeral.sign === '-') return null;
    turns.push(Number(`${numeral.digits}e${numeral.exponent}`));
    at = numeral.end;
    const colon = afterSpaces(cursor.text, at);
    const next = afterSpaces(cursor.text, colon + 1);
    if (cursor.text.charAt(colon) !== ':' || !isDigitAt(cursor.text, next)) break;
    at = next;
  }
  if (turns.length < 2) return null;
  cursor.at = at;
  return turns;
}

function afterSpaces(text: string, index: number): number {
  let at = index;
  while (isSpaceAt(text, at)) at += 1;
  return at;
}
