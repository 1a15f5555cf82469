import { spanBetween } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import type { Quantity, RatingMark } from './quantity.ts';
import type { Tolerance } from './tolerance-letter.ts';

/** What has been read of a rating so far. */
export interface RatingItems {
  count: number;
  quantities: Quantity[];
  marks: RatingMark[];
  turns: readonly number[];
  /** A tolerance written before its value: "±20 % 10 µF". */
  pending: PendingTolerance | null;
}

interface PendingTolerance {
  readonly tolerance: Tolerance;
  readonly start: number;
  readonly end: number;
}

/** Adds a mark that runs from the cursor to `end`, and steps over it. */
export function addMark(cursor: Cursor, items: RatingItems, kind: RatingMark['kind'], text: string, end: number): boolean {
  items.marks.push({ kind, text, span: spanBetween(cursor, cursor.at, end) });
  cursor.at = end;
  return true;
}
