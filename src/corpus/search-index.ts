import { compareText } from './compare-text.ts';

/** Groups in which results stand, in the order of the page. */
export const SEARCH_GROUPS = ['Teardowns', 'Parts', 'Topologies', 'Methods'] as const;
export type SearchGroup = (typeof SEARCH_GROUPS)[number];

/** One page that can be found, with its terms by weight: 3 its name, 2 its data, 1 its text. */
export interface SearchDocument {
  readonly group: SearchGroup;
  /** Address without the base path. */
  readonly address: string;
  readonly title: string;
  /** One line under the title. */
  readonly line: string;
  readonly terms: { readonly name: Iterable<string>; readonly data: Iterable<string>; readonly text: Iterable<string> };
}

/** What a page shows of a document: address, title, line. */
export type FoundDocument = readonly [address: string, title: string, line: string];

/** Documents for each term: the distance to the document before, times four, plus the weight. */
export type Shard = Readonly<Record<string, readonly number[]>>;

/** Read first: how many documents each group has, in order, and which shards there are. */
export interface SearchStart {
  readonly groups: readonly (readonly [SearchGroup, number])[];
  readonly shards: readonly string[];
  readonly chunk: number;
}

/** The whole index in pieces that are fetched on demand. */
export interface SearchIndex {
  readonly start: SearchStart;
  readonly shards: ReadonlyMap<string, Shard>;
  /** Documents in their order, `start.chunk` a piece. */
  readonly chunks: readonly (readonly FoundDocument[])[];
}

const CHUNK = 24;
/** A shard with more postings is cut by one more letter, so that no query fetches much. */
const MOST_POSTINGS = 12_000;

/** Builds the index; time and bytes grow with the number of terms, not with pairs of anything. */
export function searchIndex(documents: readonly SearchDocument[]): SearchIndex {
  const ordered = SEARCH_GROUPS.flatMap((group) => documents.filter((document) => document.group === group));
  const postings = new Map<string, number[]>();
  for (const [id, { terms }] of ordered.entries()) {
    const weights = new Map<string, number>();
    for (const term of terms.text) weights.set(term, 1);
    for (const term of terms.data) weights.set(term, 2);
    for (const term of terms.name) weights.set(term, 3);
    for (const [term, weight] of weights) {
      const list = postings.get(term);
      if (list === undefined) postings.set(term, [id * 4 + weight]);
      else list.push(id * 4 + weight);
    }
  }
  const shards = shardsOf(postings);
  const chunks = Array.from({ length: Math.ceil(ordered.length / CHUNK) }, (_, index) =>
    ordered.slice(index * CHUNK, (index + 1) * CHUNK).map(({ address, title, line }): FoundDocument => [address, title, line]),
  );
  const groups = SEARCH_GROUPS.map((group) => [group, ordered.filter((document) => document.group === group).length] as const);
  return { start: { groups, shards: [...shards.keys()].sort(compareText), chunk: CHUNK }, shards, chunks };
}

/** Shards that can hold a term that starts so, or is it. */
export function shardsFor(prefix: string, names: readonly string[]): readonly string[] {
  const name = shardName(prefix, prefix.startsWith('=') ? 64 : prefix.length);
  return names.filter((each) =>
    prefix.startsWith('=') ? each === name : !each.startsWith('q-') && (each.startsWith(name) || name.startsWith(each)),
  );
}

/** Reads the documents of one term back: their numbers and weights. */
export function readPostings(list: readonly number[]): readonly (readonly [document: number, weight: number])[] {
  let document = 0;
  return list.map((entry) => {
    document += Math.floor(entry / 4);
    return [document, entry % 4] as const;
  });
}

function shardsOf(postings: ReadonlyMap<string, readonly number[]>): Map<string, Shard> {
  const shards = new Map<string, Shard>();
  const place = (terms: readonly string[], letters: number): void => {
    for (const [name, members] of Map.groupBy(terms, (term) => shardName(term, letters))) {
      const size = members.reduce((sum, term) => sum + (postings.get(term)?.length ?? 0), 0);
      const shorter = members.filter((term) => term.length <= letters);
      if (size > MOST_POSTINGS && letters < 6 && shorter.length < members.length && !name.startsWith('q-')) {
        if (shorter.length > 0) shards.set(name, shardOf(shorter, postings));
        place(
          members.filter((term) => term.length > letters),
          letters + 1,
        );
      } else shards.set(name, shardOf(members, postings));
    }
  };
  place([...postings.keys()].sort(compareText), 2);
  return shards;
}

function shardOf(terms: readonly string[], postings: ReadonlyMap<string, readonly number[]>): Shard {
  return Object.fromEntries(
    terms.map((term) => {
      let before = 0;
      const list = (postings.get(term) ?? []).map((entry) => {
        const document = Math.floor(entry / 4);
        const distance = document - before;
        before = document;
        return distance * 4 + (entry % 4);
      });
      // A term may be called like a property of every object; a colon keeps it apart.
      return [`:${term}`, list];
    }),
  );
}

/** Name of the file for a term: its first letters; quantities by first digit and unit. Letters outside a to z share files by code. */
function shardName(term: string, letters: number): string {
  if (term.startsWith('='))
    return `q-${/\d/u.exec(term)?.[0] ?? '0'}${(/[^\d.e+-].*$/u.exec(term.slice(1))?.[0] ?? '').replaceAll(/[^A-Za-z]/gu, '').toLowerCase()}`;
  return term.slice(0, letters).replaceAll(/[^a-z0-9]/g, '_');
}
