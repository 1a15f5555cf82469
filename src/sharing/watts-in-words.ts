/** Watts with one decimal at most, none where it is zero, unbreakable before the unit: "37.5 W". */
export function wattsInWords(watts: number): string {
  return `${String(Number(watts.toFixed(1)))}\u00a0W`;
}
