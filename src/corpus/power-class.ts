/** Power classes by rated output, as the market speaks of them; the bounds are our own grouping (common practice). */
const UPPER_BOUNDS = [30, 65, 100, 140, 240] as const;

/** Names of all classes, the lowest first. */
export const POWER_CLASSES: readonly string[] = [...UPPER_BOUNDS, Number.POSITIVE_INFINITY].map((bound) => powerClass(bound) ?? '');

/** Class of a rated output power in watts: "to 30 W", "over 65 to 100 W"; null while the rating is not known. */
export function powerClass(ratedWatts: number | null): string | null {
  if (ratedWatts === null) return null;
  const index = UPPER_BOUNDS.findIndex((bound) => ratedWatts <= bound);
  if (index === -1) return 'over 240 W';
  const upper = String(UPPER_BOUNDS[index]);
  return index === 0 ? `to ${upper} W` : `over ${String(UPPER_BOUNDS[index - 1])} to ${upper} W`;
}

/** How many of the ratings fall in each class, lowest class first, classes without one left out. */
export function powerClasses(ratings: readonly (number | null)[]): readonly { readonly name: string; readonly count: number }[] {
  const counts = new Map<string, number>();
  for (const watts of ratings.filter((rating) => rating !== null).sort((one, other) => one - other)) {
    const name = powerClass(watts) ?? '';
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return [...counts].map(([name, count]) => ({ name, count }));
}
