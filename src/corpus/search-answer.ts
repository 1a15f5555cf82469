import { readPostings, shardsFor, type SearchGroup, type SearchStart, type Shard } from './search-index.ts';
import type { QueryTerm, SearchQuery } from './search-query.ts';

/** Result of a search: the numbers of the documents by group, best first, and how many documents each piece finds alone. */
export interface SearchAnswer {
  readonly groups: readonly { readonly group: SearchGroup; readonly documents: readonly number[] }[];
  readonly total: number;
  readonly alone: readonly { readonly term: QueryTerm; readonly count: number }[];
}

/** Names of the shards that a query needs. */
export function neededShards(query: SearchQuery, start: SearchStart): readonly string[] {
  const prefixes = query.terms.flatMap((term) => [term.exact, term.prefix]).filter((prefix) => prefix !== null);
  return [...new Set(prefixes.flatMap((prefix) => shardsFor(prefix, start.shards)))];
}

/** Finds the documents that have every piece of the query. Heavier terms and whole words come first, then the order of the index. */
export function answerSearch(query: SearchQuery, start: SearchStart, shards: readonly Shard[]): SearchAnswer {
  const scores = query.terms.map((term) => scoresOf(term, shards));
  const [first, ...others] = scores;
  const found = [...(first ?? new Map<number, number>())]
    .filter(([document]) => others.every((other) => other.has(document)))
    .map(([document, score]) => ({ document, score: others.reduce((sum, other) => sum + (other.get(document) ?? 0), score) }))
    .sort((one, other) => other.score - one.score || one.document - other.document);
  let before = 0;
  const groups = start.groups.map(([group, count]) => {
    const from = before;
    before += count;
    return {
      group,
      documents: found.filter(({ document }) => document >= from && document < from + count).map(({ document }) => document),
    };
  });
  return {
    groups: groups.filter(({ documents }) => documents.length > 0),
    total: found.length,
    alone: query.terms.map((term, index) => ({ term, count: scores[index]?.size ?? 0 })),
  };
}

function scoresOf(term: QueryTerm, shards: readonly Shard[]): ReadonlyMap<number, number> {
  const scores = new Map<number, number>();
  const take = (list: readonly number[], factor: number): void => {
    for (const [document, weight] of readPostings(list)) {
      scores.set(document, Math.max(scores.get(document) ?? 0, weight * factor));
    }
  };
  for (const shard of shards) {
    const exact = term.exact === null ? undefined : shard[`:${term.exact}`];
    if (exact !== undefined) take(exact, 2);
    if (term.prefix === null) continue;
    for (const key of Object.keys(shard)) {
      if (key.startsWith(term.prefix, 1)) take(shard[key] ?? [], key.length === term.prefix.length + 1 ? 2 : 1);
    }
  }
  return scores;
}
