import { roleOf } from '../roles/index.ts';
import { partAddress } from './address.ts';
import { compareText } from './compare-text.ts';
import type { CorpusPart, CorpusSheet } from './corpus-sheet.ts';
import { newestFirst } from './newest-first.ts';
import { perhapsSame } from './perhaps-same.ts';
import { ratingDifferences, type FoundRating } from './rating-differences.ts';

/** One place where a part number was found. */
export interface PartUse {
  readonly sheet: CorpusSheet;
  readonly maker: string | null;
  readonly references: readonly string[];
  readonly role: string;
  readonly stage: string;
  /** Rating as found on this sheet. */
  readonly rating: string | null;
}

/** A part number and all its uses. Spellings are never merged: "OC-4082" and "OC4082" have a page each. */
export interface PartPage {
  readonly number: string;
  /** Last piece of its address: `/parts/<address>/`. */
  readonly address: string;
  /** Makers named with it, in the order of the alphabet. */
  readonly makers: readonly string[];
  /** Role ids, the most frequent first. */
  readonly roles: readonly string[];
  /** Newest sheet first. */
  readonly uses: readonly PartUse[];
  readonly sheetCount: number;
  readonly ratings: readonly FoundRating[];
  /** Dimensions in which the ratings found contradict each other; empty where they agree. */
  readonly differing: readonly string[];
  /** Numbers that differ only in writing habits. */
  readonly perhapsSame: readonly { readonly number: string; readonly address: string }[];
}

/** Every part number of the corpus with its uses, in the order of the numbers. */
export function partUses(sheets: readonly CorpusSheet[]): readonly PartPage[] {
  const found = new Map<string, PartUse[]>();
  for (const sheet of [...sheets].sort(newestFirst)) {
    for (const part of sheet.parts) {
      const use = useOf(sheet, part);
      const uses = found.get(part.number);
      if (uses === undefined) found.set(part.number, [use]);
      else uses.push(use);
    }
  }
  const numbers = [...found.keys()].sort(compareText);
  const alike = perhapsSame(numbers);
  return numbers.map((number) => pageOf(number, found.get(number) ?? [], alike.get(number) ?? []));
}

function useOf(sheet: CorpusSheet, part: CorpusPart): PartUse {
  return { sheet, maker: part.maker, references: part.references, role: part.role, stage: part.stage, rating: part.rating };
}

function pageOf(number: string, uses: readonly PartUse[], alike: readonly string[]): PartPage {
  const roles = mostFrequentFirst(uses.map((use) => use.role));
  const ratings = ratingsFound(uses);
  const bareNumber = roleOf(roles[0] ?? '')?.bareNumber ?? null;
  return {
    number,
    address: partAddress(number),
    makers: [...new Set(uses.map((use) => use.maker).filter((maker) => maker !== null))].sort(compareText),
    roles,
    uses,
    sheetCount: new Set(uses.map((use) => use.sheet.slug)).size,
    ratings,
    differing:
      ratings.length < 2
        ? []
        : ratingDifferences(
            ratings.map((rating) => rating.written),
            bareNumber,
          ),
    perhapsSame: alike.map((other) => ({ number: other, address: partAddress(other) })),
  };
}

function ratingsFound(uses: readonly PartUse[]): readonly FoundRating[] {
  const slugs = new Map<string, Set<string>>();
  for (const { rating, sheet } of uses) {
    if (rating === null) continue;
    slugs.set(rating, (slugs.get(rating) ?? new Set<string>()).add(sheet.slug));
  }
  return [...slugs].map(([written, stating]) => ({ written, sheets: stating.size })).sort((one, other) => other.sheets - one.sheets);
}

function mostFrequentFirst(words: readonly string[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  return [...counts].sort((one, other) => other[1] - one[1] || compareText(one[0], other[0])).map(([word]) => word);
}
