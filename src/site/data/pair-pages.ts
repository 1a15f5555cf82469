import { nearestPairs } from '../../corpus/nearest-pairs.ts';
import type { Manifest, SheetSummary } from '../../corpus/prepared.ts';
import { comparedSheet, type ComparedSheet } from '../../render/compared-sheet.ts';
import { readAcross } from './across.ts';

/** One page with two neighbours of a family side by side. */
export interface PairPage {
  readonly address: string;
  readonly family: string;
  readonly sheets: readonly [ComparedSheet, ComparedSheet];
}

/** All pair pages of a manifest, at most one a sheet. */
export function pairPages({ sheets }: Manifest): readonly PairPage[] {
  const across = readAcross();
  const bySlug = new Map<string, SheetSummary>(sheets.map((sheet) => [sheet.slug, sheet]));
  const comparedOf = (slug: string): ComparedSheet | null => {
    const [sheet, facts] = [bySlug.get(slug), across[slug]?.facts];
    return sheet === undefined || facts === undefined ? null : comparedSheet(sheet, facts);
  };
  return nearestPairs(sheets).flatMap(({ address, one, other }) => {
    const [first, second] = [comparedOf(one.slug), comparedOf(other.slug)];
    return first === null || second === null ? [] : [{ address, family: one.family, sheets: [first, second] as const }];
  });
}
