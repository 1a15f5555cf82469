import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerSearch, neededShards } from '../../src/corpus/search-answer.ts';
import { searchIndex, type SearchDocument, type SearchIndex } from '../../src/corpus/search-index.ts';
import { searchQuantities } from '../../src/corpus/search-quantities.ts';
import { readSearch } from '../../src/corpus/search-query.ts';
import { searchTerms, searchText } from '../../src/corpus/search-terms.ts';
import { readQuantity } from '../../src/units/read-quantity.ts';

const SEED = { seed: 20260314, numRuns: 200 };

function document(title: string, text: string, group: SearchDocument['group'] = 'Teardowns'): SearchDocument {
  return { group, address: `/${title}/`, title, line: '', terms: { name: searchTerms(title), data: [], text: searchTerms(text) } };
}

/** Titles found, read only through the shards that the query asks for, as the page does. */
function find(index: SearchIndex, typed: string): readonly string[] {
  const query = readSearch(typed);
  const shards = neededShards(query, index.start).map((name) => index.shards.get(name) ?? {});
  const answer = answerSearch(query, index.start, shards);
  return answer.groups.flatMap((group) =>
    group.documents.map((id) => index.chunks[Math.floor(id / index.start.chunk)]?.[id % index.start.chunk]?.[1] ?? ''),
  );
}

const INDEX = searchIndex([
  document(
    'Lantern',
    'Offers 5 V 3 A, 20 V⎓5 A. Filter 0.47 µF (0.47 \u03BCF on the other), divider 4.7 kΩ. Density 12.9 W/in³. Controller VLR-81C, marking 81C 2522.',
  ),
  document('Nub', 'Offers 5 V 3 A and 20 V 1.5 A. Filter 470 nF. Switch NBK-7A250. Weighs 5 a day.'),
  document('VLR-81C', 'resonant controller', 'Parts'),
  document('IPD60R360P7', 'switch', 'Parts'),
  document('Flyback', 'one switch, energy stored in the gap', 'Topologies'),
  document('Power density', 'W/cm³ and W/in³', 'Methods'),
]);

describe('what people type', () => {
  test.each([
    ['20V 5A', ['Lantern']],
    ['20 v 5 a', ['Lantern']],
    ['20V5A', ['Lantern']],
    ['5V/3A', ['Lantern', 'Nub']],
    ['0.47uF', ['Lantern', 'Nub']],
    ['0,47 µF', ['Lantern', 'Nub']],
    ['0.47\u03BCF', ['Lantern', 'Nub']],
    ['470n', ['Lantern', 'Nub']],
    ['4k7', ['Lantern']],
    ['4.7 kohm', ['Lantern']],
    ['4700 Ω', ['Lantern']],
    ['w/in3', ['Lantern', 'Power density']],
    ['W/in³', ['Lantern', 'Power density']],
    ['VLR-81C', ['Lantern', 'VLR-81C']],
    ['vlr81c', ['Lantern', 'VLR-81C']],
    ['81c', ['Lantern', 'VLR-81C']],
    ['VLR‑81', ['Lantern', 'VLR-81C']],
    ['81C 2522', ['Lantern']],
    ['7a250', ['Nub']],
    ['R360', ['IPD60R360P7']],
    ['60r360', ['IPD60R360P7']],
    ['fly', ['Flyback']],
    ['nothing-like-it', []],
  ])('%s finds %j', (typed, expected) => {
    expect([...find(INDEX, typed)].sort()).toEqual([...expected].sort());
  });

  test('a page is found only when it has every piece', () => {
    expect(find(INDEX, '20V 1.5A')).toEqual(['Nub']);
    expect(find(INDEX, '4k7 470nF switch')).toEqual([]);
  });

  test('results stand by group, the page that is called so before one that mentions it', () => {
    const index = searchIndex([document('A', 'about the boost'), document('Boost', 'x'), document('Boost', 'x', 'Topologies')]);
    expect(find(index, 'boost')).toEqual(['Boost', 'A', 'Boost']);
  });

  test('what was understood is said, and how much each piece finds alone', () => {
    const query = readSearch('4k7 at 470nF x');
    expect(query.terms.map((term) => [term.kind, term.words])).toEqual([['quantity', '4.7\u00A0kΩ'], ['quantity', '470\u00A0nF']]); // prettier-ignore
    expect(query.leftOut).toEqual(['at', 'x']);
    const shards = neededShards(query, INDEX.start).map((name) => INDEX.shards.get(name) ?? {});
    expect(answerSearch(query, INDEX.start, shards).alone.map(({ count }) => count)).toEqual([1, 2]);
  });

  test('a word that is called like a property of every object finds nothing by accident', () => {
    for (const word of ['constructor', 'toString', '__proto__', 'hasOwnProperty']) expect(find(INDEX, word)).toEqual([]);
  });

  test('nothing that is typed breaks the search', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (typed) => {
        expect(() => find(INDEX, typed)).not.toThrow();
      }),
      SEED,
    );
  });
});

describe('a quantity is the same in every writing', () => {
  const prefix = fc.constantFrom(['p', 1e-12], ['n', 1e-9], ['µ', 1e-6], ['\u03BC', 1e-6], ['m', 1e-3], ['', 1], ['k', 1e3], ['M', 1e6]); // prettier-ignore
  const unit = fc.constantFrom(['V', 'voltage'], ['A', 'current'], ['W', 'power'], ['F', 'capacitance'], ['Ω', 'resistance'], ['Hz', 'frequency']); // prettier-ignore

  test('its key has the value that the reader of entries reads', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9999 }),
        fc.integer({ min: 0, max: 2 }),
        prefix,
        unit,
        (digits, places, [sign], [symbol, dimension]) => {
          const written = `${(digits / 10 ** places).toFixed(places)} ${sign}${symbol}`;
          const read = readQuantity(written, dimension as 'voltage');
          const [found] = searchQuantities(searchText(written));
          // What no adapter has, such as a megafarad, is refused by the reader.
          if (read.ok) expect(Number.parseFloat(found?.key.slice(1) ?? '')).toBe(Number(read.value.nominal.toPrecision(6)));
        },
      ),
      SEED,
    );
  });

  test.each(['5 a day', 'part 4S2P', 'RWB-0034', 'see page 12', 'R12', 'USB 3'])('"%s" in a sentence is no quantity', (text) => {
    expect(searchQuantities(searchText(text))).toEqual([]);
  });
});

describe('the index at size', () => {
  const words = Array.from({ length: 3000 }, (_, index) => `w${((index * 7919) % 46_656).toString(36)}x${String(index % 7)}`);
  let state = 11;
  const next = (below: number): number => (state = (state * 16_807) % 2_147_483_647) % below;
  const documents = Array.from({ length: 1000 }, (_, index) =>
    document(
      `Sheet ${String(index)}`,
      Array.from({ length: 400 }, () => words[Math.floor(next(3000) * (next(1000) / 1000))] ?? '').join(' '),
    ),
  );
  const index = searchIndex(documents);

  test('a first query of two words fetches less than 250 KB, uncompressed', () => {
    const bytes = (value: unknown): number => JSON.stringify(value).length;
    const query = readSearch(`${words[0] ?? ''} ${words[400] ?? ''}`);
    const names = neededShards(query, index.start);
    const shards = names.map((name) => index.shards.get(name) ?? {});
    const found = answerSearch(query, index.start, shards).groups.flatMap((group) => group.documents.slice(0, 8));
    const chunks = [...new Set(found.map((id) => Math.floor(id / index.start.chunk)))].map((at) => index.chunks[at]);
    expect(found.length).toBeGreaterThan(0);
    expect(bytes(index.start) + bytes(shards) + bytes(chunks)).toBeLessThan(250_000);
  });

  test('every word of every page is found through the shards that its query names', () => {
    for (const [at, { terms }] of documents.slice(0, 5).entries()) {
      for (const word of [...terms.text].slice(0, 40)) {
        const query = readSearch(word);
        const shards = neededShards(query, index.start).map((name) => index.shards.get(name) ?? {});
        expect(answerSearch(query, index.start, shards).groups[0]?.documents, word).toContain(at);
      }
    }
  });
});
