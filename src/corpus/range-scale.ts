import type { RangeColumn } from './finder-query.ts';

/** Where a column's values stand between the ends of its range, and how many stand where. */
export interface RangeScale {
  readonly low: number;
  readonly high: number;
  /** Each step multiplies instead of adding: for numbers that span decades. */
  readonly isLogarithmic: boolean;
  /** Whole numbers only. */
  readonly isWhole: boolean;
  /** Number of rows in each of equal pieces of the scale. */
  readonly bins: readonly number[];
}

const LOGARITHMIC: readonly RangeColumn[] = ['watts', 'volume', 'price'];
const WHOLE: readonly RangeColumn[] = ['ports', 'year'];
const MOST_BINS = 24;

/** Scale over all values that are known; null where fewer than two differ, since there is nothing to set then. */
export function rangeScale(column: RangeColumn, values: readonly (number | null)[]): RangeScale | null {
  const known = values.filter((value) => value !== null).filter((value) => Number.isFinite(value));
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of known) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  if (known.length === 0 || low >= high) return null;
  const isWhole = WHOLE.includes(column);
  const scale = { low, high, isLogarithmic: LOGARITHMIC.includes(column) && low > 0, isWhole, bins: [] };
  const count = isWhole ? Math.min(MOST_BINS, high - low + 1) : MOST_BINS;
  const bins = Array.from({ length: count }, () => 0);
  for (const value of known) {
    const place = isWhole && count < MOST_BINS ? value - low : Math.min(count - 1, Math.floor(fractionOf(scale, value) * count));
    bins[place] = (bins[place] ?? 0) + 1;
  }
  return { ...scale, bins };
}

/** Where a value stands, 0 at the low end and 1 at the high one. */
export function fractionOf({ low, high, isLogarithmic }: RangeScale, value: number): number {
  const fraction = isLogarithmic ? Math.log(Math.max(value, low) / low) / Math.log(high / low) : (value - low) / (high - low);
  return Math.min(1, Math.max(0, fraction));
}

/** The value at a place of the scale, with the digits that a person would type. */
export function valueAt(scale: RangeScale, fraction: number): number {
  const { low, high, isLogarithmic, isWhole } = scale;
  if (fraction <= 0) return low;
  if (fraction >= 1) return high;
  const value = isLogarithmic ? low * (high / low) ** fraction : low + fraction * (high - low);
  const rounded = isWhole ? Math.round(value) : Number(value.toPrecision(value >= 100 ? 3 : 2));
  return Math.min(high, Math.max(low, rounded));
}
