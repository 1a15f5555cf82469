import { searchQuantities } from './search-quantities.ts';
import { isCommonWord, lookUpForm, searchText } from './search-terms.ts';

/** One piece of what was typed. A page is found when, for every piece, it has the exact term or a word that starts so. */
export interface QueryTerm {
  readonly kind: 'quantity' | 'word';
  /** As understood, for the reader. */
  readonly words: string;
  readonly exact: string | null;
  readonly prefix: string | null;
}

/** What was typed, as it was understood. */
export interface SearchQuery {
  readonly terms: readonly QueryTerm[];
  /** Pieces that are not looked up: words that stand everywhere, and single letters. */
  readonly leftOut: readonly string[];
}

const MOST_TERMS = 8;

/** Reads what a person types: "20V 5A", "0.47uF", "4k7", "w/in3", "OC-4082", a half of a number, words. Never fails. */
export function readSearch(typed: string): SearchQuery {
  const text = searchText(typed.slice(0, 200));
  const terms: QueryTerm[] = [];
  const leftOut: string[] = [];
  let from = 0;
  const takeWords = (until: number): void => {
    for (const piece of text.slice(from, until).split(/[\s,;:"()]+/u)) {
      const word = lookUpForm(piece);
      if (word === '') continue;
      if (word.length < 2 || isCommonWord(word)) leftOut.push(piece);
      else terms.push({ kind: 'word', words: piece, exact: null, prefix: word });
    }
  };
  for (const quantity of searchQuantities(text, true)) {
    takeWords(quantity.start);
    const written = lookUpForm(text.slice(quantity.start, quantity.end).replaceAll(/\s/gu, ''));
    terms.push({ kind: 'quantity', words: quantity.words, exact: quantity.key, prefix: written.length < 2 ? null : written });
    from = quantity.end;
  }
  takeWords(text.length);
  const seen = new Set<string>();
  const distinct = terms.filter((term) => {
    const key = `${term.exact ?? ''} ${term.prefix ?? ''}`;
    return !seen.has(key) && seen.add(key).size > 0;
  });
  return { terms: distinct.slice(0, MOST_TERMS), leftOut: [...leftOut, ...distinct.slice(MOST_TERMS).map((term) => term.words)] };
}
