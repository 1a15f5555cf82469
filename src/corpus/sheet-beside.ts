import { nearestSheets, type NearSheet } from './likeness/nearest-sheets.ts';
import { sheetRanks, type SheetRank } from './sheet-ranks.ts';
import type { Diagnostic } from '../diagnostics/finding.ts';
import type { Manifest } from './prepared.ts';

/** What the page of one sheet shows of the others. */
export interface SheetBeside {
  readonly near: readonly NearSheet[];
  readonly ranks: readonly SheetRank[];
  /** Findings that only show when all sheets lie side by side. */
  readonly findings: readonly Diagnostic[];
}

/** A sheet beside which nothing is known of others. */
export const NOTHING_BESIDE: SheetBeside = { near: [], ranks: [], findings: [] };

const HELD = new WeakMap<Manifest, ReadonlyMap<string, SheetBeside>>();

/** All sheets beside each other, by address; compared once for each manifest. */
export function sheetsBeside(manifest: Manifest): ReadonlyMap<string, SheetBeside> {
  const held = HELD.get(manifest);
  if (held !== undefined) return held;
  const near = nearestSheets(manifest.sheets);
  const ranks = sheetRanks(manifest.sheets);
  const beside = new Map(
    manifest.sheets.map(({ slug }) => [
      slug,
      { near: near.get(slug) ?? [], ranks: ranks.get(slug) ?? [], findings: manifest.findingsAcross[slug] ?? [] },
    ]),
  );
  HELD.set(manifest, beside);
  return beside;
}
