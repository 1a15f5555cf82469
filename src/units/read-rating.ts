import type { Dimension } from './dimension.ts';
import { cursorOn, hasErrors, refusalOf } from './cursor.ts';
import type { Rating, Reading } from './quantity.ts';
import { chargeRemark } from './charge-remark.ts';
import { readRatingItems } from './rating-items.ts';

/** How the row of a rating reads numbers that carry no unit, and letters that several units share. */
export interface RatingOptions {
  /** Dimension of a number without a unit ("470" in a resistor row); null refuses such a number. */
  readonly bareNumber: Dimension | null;
}

/**
 * Reads a part rating in any order: quantities, safety class, dielectric, fuse speed, technology and other words, count and turns;
 * separated by spaces, commas, slashes, semicolons or middle dots. The whole text is accounted for. Never throws.
 */
export function readRating(text: string, options: RatingOptions = { bareNumber: null }): Reading<Rating> {
  const refusal = refusalOf(text, 'a rating');
  if (refusal !== null) return { ok: false, remarks: [refusal] };
  const cursor = cursorOn(text);
  const items = readRatingItems(cursor, options.bareNumber);
  if (hasErrors(cursor.remarks)) return { ok: false, remarks: cursor.remarks };
  const charge = chargeRemark(items.quantities);
  const value = { count: items.count, quantities: items.quantities, marks: items.marks, turns: items.turns, written: text };
  return { ok: true, value, remarks: charge === null ? cursor.remarks : [...cursor.remarks, charge] };
}
