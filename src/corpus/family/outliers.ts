import { quantileOf } from '../spread.ts';

/** Fewer figures than this have no middle to be far from. */
const LEAST = 5;

/** Outliers that are named. */
const NAMED = 5;

/**
 * Figures outside the inner fences: more than one and a half interquartile ranges beyond the quartiles. Farthest first.
 * Source: J. W. Tukey, Exploratory Data Analysis, Addison-Wesley 1977, section 2D; quartiles by linear interpolation.
 */
export function outliersOf<T extends { readonly figure: number }>(rows: readonly T[]): readonly (T & { readonly side: 'low' | 'high' })[] {
  const sorted = rows.map(({ figure }) => figure).sort((one, other) => one - other);
  const lower = quantileOf(sorted, 0.25);
  const upper = quantileOf(sorted, 0.75);
  if (sorted.length < LEAST || lower === null || upper === null) return [];
  const reach = 1.5 * (upper - lower);
  const beyond = (figure: number): number => Math.max(lower - reach - figure, figure - upper - reach);
  return rows
    .filter(({ figure }) => beyond(figure) > 1e-9 * Math.abs(figure))
    .sort((one, other) => beyond(other.figure) - beyond(one.figure))
    .slice(0, NAMED)
    .map((row) => ({ ...row, side: row.figure < lower ? 'low' : 'high' }));
}
