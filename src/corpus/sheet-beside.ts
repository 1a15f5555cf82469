import { nearestPairs, pairOf, type SheetPair } from './nearest-pairs.ts';
import { nearestSheets, type NearSheet } from './likeness/nearest-sheets.ts';
import { sheetRanks, type SheetRank } from './sheet-ranks.ts';
import type { Diagnostic } from '../diagnostics/finding.ts';
import { sizedDevices, type SizedDevice } from './size-field.ts';
import type { Manifest } from './prepared.ts';

/** What the page of one sheet shows of the others. */
export interface SheetBeside {
  readonly near: readonly NearSheet[];
  /** Address of the page with the nearest side by side, under `/compare/`. */
  readonly pair: string | null;
  readonly ranks: readonly SheetRank[];
  /** Findings that only show when all sheets lie side by side. */
  readonly findings: readonly Diagnostic[];
}

/** A sheet beside which nothing is known of others. */
export const NOTHING_BESIDE: SheetBeside = { near: [], pair: null, ranks: [], findings: [] };

/** All sheets beside each other. */
interface AllBeside {
  readonly bySlug: ReadonlyMap<string, SheetBeside>;
  readonly pairs: readonly SheetPair[];
  /** For the scatter of all. */
  readonly devices: readonly SizedDevice[];
}

const HELD = new WeakMap<Manifest, AllBeside>();

/** All sheets beside each other, by address; compared once for each manifest. */
export function sheetsBeside(manifest: Manifest): AllBeside {
  const held = HELD.get(manifest);
  if (held !== undefined) return held;
  const near = nearestSheets(manifest.sheets);
  const ranks = sheetRanks(manifest.sheets);
  const pairs = nearestPairs(manifest.sheets, near);
  const byAddress = new Map(pairs.map((pair) => [pair.address, pair]));
  const bySlug = new Map(
    manifest.sheets.map(({ slug }) => {
      const ofSheet = near.get(slug) ?? [];
      const pair = pairOf(slug, ofSheet[0]?.slug, byAddress);
      return [slug, { near: ofSheet, pair, ranks: ranks.get(slug) ?? [], findings: manifest.findingsAcross[slug] ?? [] }];
    }),
  );
  const beside = { bySlug, pairs, devices: sizedDevices(manifest.sheets) };
  HELD.set(manifest, beside);
  return beside;
}
