import type { CorpusSheet } from '../corpus-sheet.ts';
import { compareText } from '../compare-text.ts';
import { KIND_WEIGHT, type LikenessToken } from './likeness-token.ts';
import { likenessTokens } from './likeness-tokens.ts';

/** One sheet as the index holds it; tokens are numbers in ascending order, so that two lists are walked side by side. */
export interface IndexedSheet {
  readonly sheet: CorpusSheet;
  readonly tokens: Int32Array;
  /** Length of its vector of weights; 0 where it has no token that says anything. */
  readonly length: number;
}

/** All sheets and the tokens that they hold. `sheets` stand in the order of rated power, then of addresses. */
export interface TokenIndex {
  readonly sheets: readonly IndexedSheet[];
  readonly tokens: readonly LikenessToken[];
  /** Weight of each token: rarity times what its kind says. */
  readonly weights: Float64Array;
  /** Places in `sheets` of the sheets that hold a token, ascending. */
  readonly holders: readonly Int32Array[];
}

/**
 * Rarity of a token that `holders` of `sheets` sheets have: ln((1 + sheets) / (1 + holders)), the smoothed inverse document frequency.
 * What every sheet has weighs nothing.
 */
export function rarity(sheets: number, holders: number): number {
  return Math.log((1 + sheets) / (1 + holders));
}

/** Indexes all sheets in one pass over them and one over their tokens. */
export function tokenIndex(sheets: readonly CorpusSheet[]): TokenIndex {
  const ordered = [...sheets].sort((one, other) => (one.ratedWatts ?? 0) - (other.ratedWatts ?? 0) || compareText(one.slug, other.slug));
  const numbers = new Map<string, number>();
  const tokens: LikenessToken[] = [];
  const holders: number[][] = [];
  const held = ordered.map((sheet, place) =>
    Int32Array.from(likenessTokens(sheet), (token) => {
      const number = numbers.get(token.key) ?? tokens.push(token) - 1;
      numbers.set(token.key, number);
      (holders[number] ??= []).push(place);
      return number;
    }).sort(),
  );
  const weights = Float64Array.from(tokens, ({ kind }, number) => KIND_WEIGHT[kind] * rarity(ordered.length, holders[number]?.length ?? 0));
  return {
    sheets: ordered.map((sheet, place) => indexed(sheet, held[place] ?? new Int32Array(), weights)),
    tokens,
    weights,
    holders: holders.map((places) => Int32Array.from(places)),
  };
}

function indexed(sheet: CorpusSheet, tokens: Int32Array, weights: Float64Array): IndexedSheet {
  let square = 0;
  for (const number of tokens) square += (weights[number] ?? 0) ** 2;
  return { sheet, tokens, length: Math.sqrt(square) };
}
