import { compareText } from './compare-text.ts';
import type { CorpusSheet } from './corpus-sheet.ts';
import type { NearSheet } from './likeness/nearest-sheets.ts';

/** Two sheets that are worth a page side by side: one is the most like the other. */
export interface SheetPair {
  readonly address: string;
  readonly one: CorpusSheet;
  readonly other: CorpusSheet;
}

/**
 * Each sheet with the one that is most like it: at most one pair a sheet, so that the pages grow with the sheets and not with their square,
 * and one page where each is the other's nearest. In the order of the sheets. Two pairs never share an address.
 */
export function nearestPairs(
  sheets: readonly CorpusSheet[],
  near: ReadonlyMap<string, readonly Pick<NearSheet, 'slug'>[]>,
): readonly SheetPair[] {
  const bySlug = new Map(sheets.map((sheet) => [sheet.slug, sheet]));
  const pairs = new Map<string, SheetPair>();
  for (const sheet of sheets) {
    const nearest = bySlug.get(near.get(sheet.slug)?.[0]?.slug ?? '');
    if (nearest === undefined) continue;
    const [one, other] = compareText(sheet.slug, nearest.slug) < 0 ? [sheet, nearest] : [nearest, sheet];
    const address = `${one.slug}-and-${other.slug}`;
    if (!pairs.has(address)) pairs.set(address, { address, one, other });
  }
  return [...pairs.values()];
}

/** Address of the page of a sheet and its nearest; null where there is none, or where another pair has taken the address. */
export function pairOf(slug: string, nearest: string | undefined, pairs: ReadonlyMap<string, SheetPair>): string | null {
  if (nearest === undefined) return null;
  const [one, other] = compareText(slug, nearest) < 0 ? [slug, nearest] : [nearest, slug];
  const pair = pairs.get(`${one}-and-${other}`);
  return pair?.one.slug === one && pair.other.slug === other ? pair.address : null;
}
