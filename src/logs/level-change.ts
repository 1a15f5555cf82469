import { meanOfRows } from './mean-of-rows.ts';

/** What a column did from one moment on. */
export interface LevelChange {
  readonly before: number;
  readonly after: number;
  readonly lowest: number;
  readonly highest: number;
  /** Seconds until it stayed within 5 % of the new level; null where it did not before the end of the stretch. */
  readonly settling: number | null;
}

/** A stretch of rows around a change: from the step before to the step behind. */
export interface Stretch {
  /** First row of the old level that counts. */
  readonly from: number;
  /** First row of the new level. */
  readonly at: number;
  /** First row that no longer counts. */
  readonly to: number;
}

/**
 * Band around the new level within which it has settled. The limits of a fixed supply's voltage are the same 5 %:
 * USB PD R3.2 V1.1, section 7.1.4.1 (vSrcNew), from memory.
 */
const SETTLED_SHARE = 0.05;
/** Rows of this long on either side make the levels, seconds. */
const LEVEL_SECONDS = 5;
/** Longest that a settling is followed, seconds. */
const FOLLOWED_SECONDS = 10;

/** Follows a column over a change; null where one side has no number. */
export function levelChange(time: Float64Array, values: Float64Array, { from, at, to }: Stretch): LevelChange | null {
  const start = time[at] ?? 0;
  const first = Math.max(from, rowFrom(time, start - LEVEL_SECONDS));
  const last = Math.min(to, Math.max(at + 1, rowFrom(time, start + FOLLOWED_SECONDS)));
  // The second half of what is followed makes the new level: it has settled where nothing of that half lies outside the band.
  const middle = Math.floor((at + last) / 2);
  const before = meanOfRows(values, first, Math.max(first + 1, at));
  const after = meanOfRows(values, middle, last);
  if (before === null || after === null) return null;
  const band = SETTLED_SHARE * (Math.abs(after) > SETTLED_SHARE * Math.abs(before) ? Math.abs(after) : Math.abs(before));
  let [lowest, highest, outside] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, at - 1];
  for (let row = at; row < last; row += 1) {
    const value = values[row] ?? Number.NaN;
    if (Math.abs(value - after) > band) outside = row;
    if (value < lowest) lowest = value;
    if (value > highest) highest = value;
  }
  const settling = outside >= middle ? null : outside < at ? 0 : (time[outside + 1] ?? start) - start;
  return { before, after, lowest: Math.min(lowest, after), highest: Math.max(highest, after), settling };
}

/** First row at or behind a moment. */
export function rowFrom(time: Float64Array, moment: number): number {
  let [low, high] = [0, time.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((time[middle] ?? 0) < moment) low = middle + 1;
    else high = middle;
  }
  return low;
}
