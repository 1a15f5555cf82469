/** How a figure is spread over several sheets. */
export interface Spread {
  readonly count: number;
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

/** Spread of the numbers that are known; null where fewer than two are, since one sheet is no spread. */
export function spreadOf(numbers: readonly (number | null)[]): Spread | null {
  const known = numbers.filter((number) => number !== null).sort((one, other) => one - other);
  const low = known[0];
  const high = known.at(-1);
  const median = medianOf(known);
  if (known.length < 2 || low === undefined || high === undefined || median === null) return null;
  return { count: known.length, low, median, high };
}

/** Median of numbers in ascending order; null of none. */
export function medianOf(ascending: readonly number[]): number | null {
  return quantileOf(ascending, 0.5);
}

/** Quantile of numbers in ascending order by linear interpolation between neighbours; null of none. */
export function quantileOf(ascending: readonly number[], share: number): number | null {
  const place = share * (ascending.length - 1);
  const below = ascending[Math.floor(place)];
  const above = ascending[Math.ceil(place)];
  if (below === undefined || above === undefined) return null;
  return below + (place - Math.floor(place)) * (above - below);
}
