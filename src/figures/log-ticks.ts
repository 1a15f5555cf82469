/** Values 1, 2 and 5 times a power of ten inside a range, both ends included. */
export function logTicks(low: number, high: number): readonly number[] {
  if (!(low > 0) || high < low) return [];
  const ticks: number[] = [];
  for (let decade = Math.floor(Math.log10(low)); decade <= Math.ceil(Math.log10(high)); decade += 1) {
    for (const step of [1, 2, 5]) {
      const value = Number((step * 10 ** decade).toPrecision(1));
      if (value >= low && value <= high) ticks.push(value);
    }
  }
  return ticks;
}
