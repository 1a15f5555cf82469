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
  const above = known[Math.floor(known.length / 2)];
  const below = known[Math.floor((known.length - 1) / 2)];
  if (known.length < 2 || low === undefined || high === undefined || above === undefined || below === undefined) return null;
  return { count: known.length, low, median: (below + above) / 2, high };
}
