import type { Cursor } from './cursor.ts';
import { skipSpaces } from './cursor.ts';
import { buildQuantity, withNumber } from './build-quantity.ts';
import type { Quantity } from './quantity.ts';
import { readTerm } from './read-term.ts';
import type { Term } from './read-term.ts';

const LENGTH = { dimension: 'length', bareNumber: null, isFuse: false } as const;
const NO_LIMIT = { bound: null, qualifier: null, isApproximate: false } as const;

/** Reads edges inside a rating, "18 x 25 mm" or "8.35x7.7x4 mm", as lengths; null and unmoved where the last has no unit of length. */
export function readEdgeList(cursor: Cursor): readonly Quantity[] | null {
  if (!/[×*xX]/.test(cursor.text)) return null;
  const before = cursor.at;
  const terms: Term[] = [];
  for (;;) {
    const term = readTerm(cursor, LENGTH);
    if (term === null) break;
    terms.push(term);
    skipSpaces(cursor);
    if (!'×*xX'.includes(cursor.text.charAt(cursor.at)) || cursor.text.charAt(cursor.at) === '') break;
    cursor.at += 1;
  }
  const last = terms.at(-1);
  const unit = last?.unit ?? null;
  const isAllLength = terms.every((term) => term.unit === null || term.unit.dimension === 'length');
  if (last === undefined || unit?.dimension !== 'length' || terms.length < 2 || !isAllLength) {
    cursor.at = before;
    return null;
  }
  return terms.flatMap((term) => {
    const owned = term.unit === null ? withNumber(term, last) : term;
    const edge = buildQuantity(cursor, 'one', [owned], unit, { limit: NO_LIMIT, tolerance: null, from: term.start, to: term.end });
    return edge === null ? [] : [edge];
  });
}
