/** Order of two texts by code unit, the same on every machine. */
export function byText(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}
