import { endOfDigits, isDigitAt, isSpaceAt } from './characters.ts';
import type { Cursor } from './cursor.ts';

/** Reads the turns of windings, "34:4:4" or "22 : 4 : 5 : 13": two numbers or more. Null and unmoved otherwise. */
export function readTurns(cursor: Cursor): readonly number[] | null {
  if (!cursor.text.includes(':', cursor.at)) return null;
  const turns: number[] = [];
  let at = cursor.at;
  for (;;) {
    const end = endOfCount(cursor.text, at);
    if (end === at) return null;
    turns.push(Number(cursor.text.slice(at, end)));
    at = end;
    const colon = afterSpaces(cursor.text, at);
    const next = afterSpaces(cursor.text, colon + 1);
    if (cursor.text.charAt(colon) !== ':' || !isDigitAt(cursor.text, next)) break;
    at = next;
  }
  if (turns.length < 2) return null;
  cursor.at = at;
  return turns;
}

/** Turns are counts, at most with a fraction: "35:4 480 µH" is four turns and an inductance, not 4480 turns. */
function endOfCount(text: string, index: number): number {
  const end = endOfDigits(text, index);
  return end > index && text.charAt(end) === '.' && isDigitAt(text, end + 1) ? endOfDigits(text, end + 1) : end;
}

function afterSpaces(text: string, index: number): number {
  let at = index;
  while (isSpaceAt(text, at)) at += 1;
  return at;
}
