import type { Cursor } from './cursor.ts';
import { hasTolerance, spreadBy, takesTolerance } from './late-tolerance.ts';
import type { Quantity } from './quantity.ts';
import type { RatingItems } from './rating-found.ts';
import { readTolerance } from './read-tolerance.ts';

/** "±10 %" that stands apart from its value: it belongs to the last one that can have it. */
export function readLooseTolerance(cursor: Cursor, items: RatingItems): boolean {
  const before = cursor.at;
  const sign = cursor.text.charAt(cursor.at);
  const written = sign !== '' && '±+-t'.includes(sign) ? readTolerance(cursor, null) : null;
  if (written === null || written.unit !== null) {
    cursor.at = before;
    return false;
  }
  const index = items.quantities.findLastIndex(takesTolerance);
  const owner = items.quantities[index];
  if (owner !== undefined) items.quantities[index] = spreadBy(owner, written.tolerance);
  else if (items.pending === null && !items.quantities.some(hasTolerance))
    items.pending = { tolerance: written.tolerance, start: before, end: cursor.at };
  else cursor.at = before;
  return cursor.at > before;
}

/** The quantity with the tolerance that was written before it, if one waits. */
export function withPending(items: RatingItems, quantity: Quantity): Quantity {
  if (items.pending === null || !takesTolerance(quantity)) return quantity;
  const { tolerance } = items.pending;
  items.pending = null;
  return spreadBy(quantity, tolerance);
}
