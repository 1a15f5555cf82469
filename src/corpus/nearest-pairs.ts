import { compareText } from './compare-text.ts';
import type { CorpusSheet } from './corpus-sheet.ts';

/** Two sheets of one family that are worth a page side by side. */
export interface SheetPair {
  readonly address: string;
  readonly one: CorpusSheet;
  readonly other: CorpusSheet;
}

/**
 * Neighbours of a family in the order of rated power, then density: at most one pair a sheet, so that the pages grow with the
 * sheets and not with their square. Two pairs never share an address.
 */
export function nearestPairs(sheets: readonly CorpusSheet[]): readonly SheetPair[] {
  const pairs = new Map<string, SheetPair>();
  for (const [, members] of [...Map.groupBy(sheets, (sheet) => sheet.family)].sort(([one], [other]) => compareText(one, other))) {
    const known = members.filter((sheet) => sheet.ratedWatts !== null).sort(byPowerThenDensity);
    for (const [index, one] of known.entries()) {
      const other = known[index + 1];
      if (other === undefined) continue;
      const address = `${one.slug}-and-${other.slug}`;
      if (!pairs.has(address)) pairs.set(address, { address, one, other });
    }
  }
  return [...pairs.values()];
}

function byPowerThenDensity(one: CorpusSheet, other: CorpusSheet): number {
  return (
    (one.ratedWatts ?? 0) - (other.ratedWatts ?? 0) ||
    (one.densityWPerCm3 ?? 0) - (other.densityWPerCm3 ?? 0) ||
    compareText(one.slug, other.slug)
  );
}
