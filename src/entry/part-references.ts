import type { Span } from '../units/quantity.ts';

/** A reference and where it stands in its key; those of a range all stand where the range does. */
export interface PartReference {
  readonly reference: string;
  readonly span: Span;
}

/** Most parts that one range may name; more is a slip. */
const LONGEST_RANGE = 200;

const RANGE = /^(?<prefix>.*?[^\d\s])(?<from>\d+)\s*(?:–|—|-|…|\.\.+|to)\s*(?<again>.*?)(?<to>\d+)$/u;

/**
 * References of one key: "Q2, Q3" are two, "R11–R14" and "R11-14" are four. Anything else is one reference as it stands, so that "C#1",
 * "Q_SR1" and "CX-1" stay whole.
 */
export function readReferences(key: string): readonly PartReference[] {
  return [...key.matchAll(/[^,;]+/gu)].flatMap((piece) => {
    const text = piece[0].trim();
    const start = piece.index + (piece[0].length - piece[0].trimStart().length);
    const span = { start, end: start + text.length };
    return text === '' ? [] : expanded(text).map((reference) => ({ reference, span }));
  });
}

function expanded(text: string): readonly string[] {
  const groups = RANGE.exec(text)?.groups;
  const prefix = groups?.['prefix'];
  const [from, to] = [Number(groups?.['from']), Number(groups?.['to'])];
  if (prefix === undefined || !(to > from) || to - from >= LONGEST_RANGE) return [text];
  const again = groups?.['again'] ?? '';
  if (again !== '' && again !== prefix) return [text];
  return Array.from({ length: to - from + 1 }, (_, index) => `${prefix}${from + index}`);
}
