import { compareText } from './compare-text.ts';
import type { CorpusSheet } from './corpus-sheet.ts';

/** Newest date of issue first; sheets of one day stand in the order of their addresses, so that the order never changes by itself. */
export function newestFirst(one: CorpusSheet, other: CorpusSheet): number {
  return compareText(other.published, one.published) || compareText(one.slug, other.slug);
}
