/** Order of two texts by code unit: the same on every machine, whatever its language settings. */
export function compareText(one: string, other: string): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}
