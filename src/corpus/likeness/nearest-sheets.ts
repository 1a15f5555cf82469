import { compareText } from '../compare-text.ts';
import type { CorpusSheet } from '../corpus-sheet.ts';
import { cosineOf, likenessOf } from './likeness-of.ts';
import { samePlatform } from './same-platform.ts';
import { sharedEvidence, type SharedEvidence } from './shared-evidence.ts';
import { tokenIndex, type IndexedSheet, type TokenIndex } from './token-index.ts';

/** How many near sheets a sheet shows. */
export const NEAREST = 5;

/** Sheets that are looked at for one sheet; a bound on them keeps the whole linear in the number of sheets. */
const CANDIDATES = 250;

/** Holders of one token that are looked at: those nearest in rated power. */
const HOLDERS_A_TOKEN = 100;

/** Below this likeness two sheets have nothing in common but what many have. */
const LEAST_LIKENESS = 0.08;

/** A near sheet with the reasons. */
export interface NearSheet {
  readonly slug: string;
  readonly number: string | null;
  readonly maker: string;
  readonly name: string;
  readonly topology: string;
  /** 0 to 1, two decimals. */
  readonly likeness: number;
  readonly evidence: SharedEvidence;
  /** What differs, where both are one platform by strong evidence; null otherwise. */
  readonly platform: { readonly differs: readonly string[] } | null;
}

/**
 * The nearest sheets of each, by address; nearest first, equal ones by address. Candidates come from an inverted index, the rarest tokens
 * first, so that the work grows with the number of sheets and not with its square.
 */
export function nearestSheets(sheets: readonly CorpusSheet[], count: number = NEAREST): ReadonlyMap<string, readonly NearSheet[]> {
  const index = tokenIndex(sheets);
  const seen = new Int32Array(index.sheets.length).fill(-1);
  return new Map(index.sheets.map((one, place) => [one.sheet.slug, nearestOf(index, one, place, seen, count)]));
}

function nearestOf(index: TokenIndex, one: IndexedSheet, place: number, seen: Int32Array, count: number): readonly NearSheet[] {
  const near: Found[] = [];
  for (const candidate of candidatesOf(index, one, place, seen)) {
    const other = index.sheets[candidate];
    if (other === undefined) continue;
    // The cosine is the most that the likeness can be: most candidates are out of the running by it.
    const cosine = cosineOf(index, one, other);
    if (cosine < (near[count - 1]?.likeness ?? LEAST_LIKENESS)) continue;
    const likeness = likenessOf(index, one, other, cosine);
    if (likeness < LEAST_LIKENESS) continue;
    near.push({ other, likeness });
    near.sort(nearestFirst);
    if (near.length > count) near.pop();
  }
  return near.map(({ other, likeness }) => nearSheet(index, one, other, likeness));
}

interface Found {
  readonly other: IndexedSheet;
  readonly likeness: number;
}

function nearestFirst(left: Found, right: Found): number {
  return right.likeness - left.likeness || compareText(left.other.sheet.slug, right.other.sheet.slug);
}

function nearSheet(index: TokenIndex, one: IndexedSheet, other: IndexedSheet, likeness: number): NearSheet {
  const { slug, number, maker, name, topology } = other.sheet;
  return {
    slug,
    number,
    maker,
    name,
    topology,
    likeness: Math.round(likeness * 100) / 100,
    evidence: sharedEvidence(index, one, other),
    platform: samePlatform(one.sheet, other.sheet),
  };
}

/** Places of the sheets that share its rarest tokens; `seen` holds, for each sheet, the last one that it was a candidate of. */
function candidatesOf(index: TokenIndex, one: IndexedSheet, place: number, seen: Int32Array): readonly number[] {
  const rarestFirst = [...one.tokens].sort((left, right) => holderCount(index, left) - holderCount(index, right) || left - right);
  const found: number[] = [];
  seen[place] = place;
  for (const token of rarestFirst) {
    if ((index.weights[token] ?? 0) === 0 || found.length >= CANDIDATES) break;
    for (const candidate of nearestHolders(index.holders[token] ?? new Int32Array(), place)) {
      if (seen[candidate] === place) continue;
      seen[candidate] = place;
      found.push(candidate);
    }
  }
  return found;
}

function holderCount(index: TokenIndex, token: number): number {
  return index.holders[token]?.length ?? 0;
}

/** The holders around a place; sheets stand in the order of rated power, so these are the nearest in power. */
function nearestHolders(holders: Int32Array, place: number): Int32Array {
  if (holders.length <= HOLDERS_A_TOKEN) return holders;
  let low = 0;
  let high = holders.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((holders[middle] ?? 0) < place) low = middle + 1;
    else high = middle;
  }
  const start = Math.max(0, Math.min(low - HOLDERS_A_TOKEN / 2, holders.length - HOLDERS_A_TOKEN));
  return holders.subarray(start, start + HOLDERS_A_TOKEN);
}
