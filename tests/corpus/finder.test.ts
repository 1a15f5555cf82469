import fc from 'fast-check';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { findSheets, fulfils, sortRows } from '../../src/corpus/find-sheets.ts';
import {
  CHOICE_GROUPS,
  finderAddress,
  NO_QUERY,
  NUMBER_COLUMNS,
  RANGE_COLUMNS,
  readFinderQuery,
  withChoice,
  withRange,
  type FinderQuery,
} from '../../src/corpus/finder-query.ts';
import type { FinderRow } from '../../src/corpus/finder-row.ts';
import { querySentence } from '../../src/corpus/finder-words.ts';
import { packFinder, unpackFinder } from '../../src/corpus/pack-finder.ts';
import { fractionOf, rangeScale, valueAt } from '../../src/corpus/range-scale.ts';

const SEED = { seed: 20260314, numRuns: 200 };

/** An invented device; what a test does not name has a plain value. */
function device(given: Partial<FinderRow> & { readonly slug: string }): FinderRow {
  return {
    maker: 'Larkmoor', name: given.slug, number: null, revision: 'A', kind: 'wall charger', watts: 65, volume: 80, density: 0.81, specific: 500,
    mass: 130, efficiency: 92, ports: 2, year: 2026, price: 40, family: 'flyback', switches: ['GaN'], controllers: ['OC-1'], over: 0, straddles: 0,
    withheld: 0, within: 3, ...given,
  }; // prettier-ignore
}

const number = fc.option(fc.integer({ min: 1, max: 500 }), { nil: null });
const rows = fc
  .array(fc.record({ watts: number, volume: number, density: number, ports: fc.integer({ min: 1, max: 6 }), year: number, price: number, kind: fc.constantFrom('wall charger', 'power bank', 'car charger') }), { maxLength: 30 })
  .map((list) => list.map((given, index) => device({ slug: `d-${String(index)}`, ...given }))); // prettier-ignore
const range = fc
  .record({ low: number, high: number })
  .filter(({ low, high }) => (low !== null || high !== null) && (low ?? 0) <= (high ?? 1e9));
const query: fc.Arbitrary<FinderQuery> = fc.record({
  ranges: fc.dictionary(fc.constantFrom(...RANGE_COLUMNS), range),
  choices: fc.dictionary(
    fc.constantFrom(...CHOICE_GROUPS),
    fc.uniqueArray(fc.constantFrom('wall charger', 'GaN', 'flyback', 'OC & 4=2'), { minLength: 1 }),
  ),
  sort: fc.record({ by: fc.constantFrom(...NUMBER_COLUMNS, 'name' as const), falling: fc.boolean() }),
  columns: fc.uniqueArray(fc.constantFrom(...NUMBER_COLUMNS), { minLength: 1 }),
});

describe('what the finder finds', () => {
  test('every found device fulfils the query, every other one does not, and none is lost or doubled', () => {
    fc.assert(
      fc.property(rows, query, (all, asked) => {
        const found = findSheets(all, asked);
        expect(new Set(found).size).toBe(found.length);
        for (const row of all) expect(found.includes(row)).toBe(fulfils(row, asked));
      }),
      SEED,
    );
  });

  test('a narrower range never finds more', () => {
    fc.assert(
      fc.property(rows, query, fc.constantFrom(...RANGE_COLUMNS), range, (all, asked, column, { low, high }) => {
        const wide = findSheets(all, withRange(asked, column, { low, high: null }));
        const narrow = findSheets(all, withRange(asked, column, { low, high: high ?? 250 }));
        expect(narrow.every((row) => wide.includes(row))).toBe(true);
      }),
      SEED,
    );
  });

  test('a number that is not known is no 0: it fulfils no range, and comes last in both directions', () => {
    const all = [device({ slug: 'a', price: null }), device({ slug: 'b', price: 9 }), device({ slug: 'c', price: 70 })];
    expect(findSheets(all, withRange(NO_QUERY, 'price', { low: 0, high: null })).map((row) => row.slug)).toEqual(
      expect.arrayContaining(['b', 'c']),
    );
    expect(findSheets(all, withRange(NO_QUERY, 'price', { low: 0, high: null }))).toHaveLength(2);
    expect(sortRows(all, { by: 'price', falling: false }).map((row) => row.slug)).toEqual(['b', 'c', 'a']);
    expect(sortRows(all, { by: 'price', falling: true }).map((row) => row.slug)).toEqual(['c', 'b', 'a']);
  });

  test('both ends of a range belong to it', () => {
    const all = [30, 65, 100].map((watts) => device({ slug: String(watts), watts }));
    expect(
      findSheets(all, { ...withRange(NO_QUERY, 'watts', { low: 30, high: 65 }), sort: { by: 'watts', falling: false } }).map(
        (row) => row.watts,
      ),
    ).toEqual([30, 65]);
  });

  test('words of one group mean any of them, groups mean all of them', () => {
    const all = [
      device({ slug: 'a', kind: 'power bank' }),
      device({ slug: 'b', controllers: ['OC-2'] }),
      device({ slug: 'c', kind: 'car charger' }),
    ];
    expect(findSheets(all, withChoice(NO_QUERY, 'kind', ['power bank', 'wall charger'])).map((row) => row.slug)).toEqual(['a', 'b']);
    expect(
      findSheets(all, withChoice(withChoice(NO_QUERY, 'kind', ['power bank', 'wall charger']), 'controllers', ['OC-2'])).map(
        (row) => row.slug,
      ),
    ).toEqual(['b']);
  });

  test('a thousand devices are filtered and sorted within 20 ms', () => {
    const all = Array.from({ length: 1000 }, (_, index) =>
      device({ slug: `d-${String(index)}`, watts: 10 + ((index * 37) % 231), density: ((index * 13) % 97) / 80 }),
    );
    const asked = withRange(NO_QUERY, 'watts', { low: 60, high: 140 });
    findSheets(all, asked);
    const times = Array.from({ length: 9 }, () => {
      const start = performance.now();
      findSheets(all, asked);
      return performance.now() - start;
    }).sort((one, other) => one - other);
    expect(times[4]).toBeLessThan(20);
  });
});

describe('the address of a query', () => {
  test('says the query: reading it back gives the same', () => {
    fc.assert(
      fc.property(query, (asked) => {
        const address = new URLSearchParams(finderAddress(asked).map(([name, value]) => [name, value]));
        const read = readFinderQuery(new URLSearchParams(address.toString()));
        expect(read.refused).toEqual([]);
        expect(read.query).toEqual(asked);
      }),
      SEED,
    );
  });

  test('nothing asked is a bare address', () => {
    expect(finderAddress(NO_QUERY)).toEqual([]);
  });

  test.each([
    ['watts', '140..60', { low: 60, high: 140 }],
    ['watts', '60..', { low: 60, high: null }],
    ['density', '..0,8', { low: null, high: 0.8 }],
  ])('%s=%s is understood', (name, value, expected) => {
    expect(readFinderQuery([[name, value]]).query.ranges).toEqual({ [name]: expected });
  });

  test.each([
    ['watts', 'abc'],
    ['watts', '..'],
    ['watts', '1e999..'],
    ['colour', 'red'],
    ['sort', '-colour'],
    ['columns', 'watts.colour'],
  ])('%s=%s is refused by name, and the rest of the address still holds', (name, value) => {
    const { query: read, refused } = readFinderQuery([[name, value], ['kind', 'power bank']]); // prettier-ignore
    expect(refused).toEqual([{ name, value }]);
    expect(read.choices.kind).toEqual(['power bank']);
    expect(read.ranges).toEqual({});
  });

  test('no address, whatever it says, stops the finder', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.oneof(fc.string(), fc.constantFrom('watts', 'sort', 'columns', 'kind')), fc.string())), (pairs) => {
        expect(() => findSheets([device({ slug: 'a' })], readFinderQuery(pairs).query)).not.toThrow();
      }),
      SEED,
    );
  });

  test('a query is said in words', () => {
    const asked = withChoice(withRange(withRange(NO_QUERY, 'watts', { low: 60, high: 140 }), 'volume', { low: null, high: 260 }), 'kind', [
      'wall charger',
      'desktop charger',
    ]);
    expect(querySentence(asked, { currency: 'EUR', families: {} })).toBe(
      '60 to 140\u00A0W, up to 260\u00A0cm³, wall charger or desktop charger',
    );
    expect(querySentence(withRange(NO_QUERY, 'year', { low: null, high: 2025 }), { currency: null, families: {} })).toBe('until 2025');
  });
});

describe('the rows as they travel', () => {
  test('packing and unpacking gives the same rows', () => {
    fc.assert(
      fc.property(rows, (all) => {
        const register = { rows: all, currency: 'EUR', families: { flyback: 'Flyback' } };
        expect(unpackFinder(JSON.parse(JSON.stringify(packFinder(register))) as ReturnType<typeof packFinder>)).toEqual(register);
      }),
      SEED,
    );
  });

  test('a thousand devices take less than 60 KB compressed', () => {
    const words = ['Amber', 'Birk', 'Crag', 'Dale', 'Esk', 'Fen', 'Gill', 'Holm', 'Ings', 'Kirk'];
    let state = 7;
    const next = (below: number): number => (state = (state * 16_807) % 2_147_483_647) % below;
    const word = (): string => `${words[next(10)] ?? ''}${words[next(10)]?.toLowerCase() ?? ''}`;
    const all = Array.from({ length: 1000 }, (_, index): FinderRow => {
      const [maker, name] = [word(), `${word()} ${String(20 + next(220))}`];
      return device({
        slug: `${maker}-${name}-${String(index)}`.toLowerCase().replaceAll(' ', '-'), maker, name, number: `RWB-${String(index).padStart(4, '0')}`,
        watts: 20 + next(220), volume: next(50_000) / 100, density: next(1500) / 1000, specific: next(900), mass: next(400), efficiency: 80 + next(150) / 10,
        price: next(150), controllers: [`OC-${String(next(300))}`, `OC-${String(next(300))}`], within: next(20), over: next(4),
      }); // prettier-ignore
    });
    expect(gzipSync(JSON.stringify(packFinder({ rows: all, currency: 'EUR', families: {} }))).length).toBeLessThan(60_000);
  });
});

describe('the scale of a range', () => {
  test('a place on the scale and its value lead back to each other within a hundredth, and never outside', () => {
    const values = [20, 30, 65, 100, 140, 240];
    const scale = rangeScale('watts', values);
    if (scale === null) throw new Error('no scale');
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (fraction) => {
        const value = valueAt(scale, fraction);
        expect(value).toBeGreaterThanOrEqual(20);
        expect(value).toBeLessThanOrEqual(240);
        expect(Math.abs(fractionOf(scale, value) - fraction)).toBeLessThan(0.011);
      }),
      SEED,
    );
    expect(scale.bins.reduce((sum, count) => sum + count, 0)).toBe(values.length);
  });

  test('where all are equal there is nothing to set', () => {
    expect(rangeScale('ports', [2, 2, null])).toBeNull();
    expect(rangeScale('price', [])).toBeNull();
  });
});
