import { sheetsBeside } from '../../corpus/sheet-beside.ts';
import type { Manifest, SheetSummary } from '../../corpus/prepared.ts';
import { comparedSheet, type ComparedSheet } from '../../render/compared-sheet.ts';
import { readAcross } from './across.ts';

/** One page with a sheet and the one most like it side by side. */
export interface PairPage {
  readonly address: string;
  readonly family: string;
  readonly sheets: readonly [ComparedSheet, ComparedSheet];
}

/** All pair pages of a manifest, at most one a sheet. */
export function pairPages(manifest: Manifest): readonly PairPage[] {
  const { sheets } = manifest;
  const across = readAcross();
  const bySlug = new Map<string, SheetSummary>(sheets.map((sheet) => [sheet.slug, sheet]));
  const comparedOf = (slug: string): ComparedSheet | null => {
    const [sheet, facts] = [bySlug.get(slug), across[slug]?.facts];
    return sheet === undefined || facts === undefined ? null : comparedSheet(sheet, facts);
  };
  return sheetsBeside(manifest).pairs.flatMap(({ address, one, other }) => {
    const [first, second] = [comparedOf(one.slug), comparedOf(other.slug)];
    return first === null || second === null ? [] : [{ address, family: one.family, sheets: [first, second] as const }];
  });
}
