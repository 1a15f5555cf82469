import { describe, expect, test } from 'vitest';
import { compareSheets } from '../../src/corpus/compare-sheets.ts';
import type { ComparisonRow } from '../../src/corpus/comparison-row.ts';
import { comparedSlugs } from '../../src/corpus/comparison-address.ts';
import { nearestPairs, pairOf } from '../../src/corpus/nearest-pairs.ts';
import { pushedApart } from '../../src/figures/place-strip.ts';
import { inventedSheet } from './invented-sheet.ts';

function density(low: number, nominal: number, high: number, basis = 'cased'): ComparisonRow {
  return {
    id: 'density',
    group: 'Size',
    label: 'Density, W/cm³',
    text: nominal.toFixed(3),
    range: [low, nominal, high],
    better: 'higher',
    basis,
    mark: null,
  };
}
const betterOf = (...rows: readonly ComparisonRow[]): number | null | undefined =>
  compareSheets(rows.map((row) => [row]))[0]?.rows[0]?.better;

describe('which side is better', () => {
  test('the one whose whole interval lies above the others', () => {
    expect(betterOf(density(0.6, 0.61, 0.62), density(0.7, 0.71, 0.72))).toBe(1);
    expect(betterOf(density(0.6, 0.61, 0.62), density(0.7, 0.71, 0.72), density(0.5, 0.51, 0.52))).toBe(1);
  });

  test('none where the intervals overlap: the difference is not sure', () => {
    expect(betterOf(density(0.6, 0.65, 0.7), density(0.68, 0.71, 0.75))).toBeNull();
  });

  test('none between a cased device and a bare board', () => {
    expect(betterOf(density(0.6, 0.61, 0.62), density(1.7, 1.71, 1.72, 'board'))).toBeNull();
  });

  test('none where one of them is not known', () => {
    expect(betterOf(density(0.6, 0.61, 0.62), { ...density(0, 0, 0), range: null, text: '– not known' })).toBeNull();
  });

  test('none where better has no meaning: a larger volume is a matter of need', () => {
    const volume = (value: number): ComparisonRow => ({ ...density(value, value, value), id: 'volume', better: null });
    expect(betterOf(volume(80), volume(120))).toBeNull();
  });

  test('lower is better for a stress', () => {
    const stress = (value: number): ComparisonRow => ({ ...density(value, value, value), better: 'lower' });
    expect(betterOf(stress(0.93), stress(0.87))).toBe(1);
  });
});

describe('rows', () => {
  test('a row that only one sheet has stands, with an empty place for the other', () => {
    const [group] = compareSheets([[density(1, 1, 1)], [density(1, 1, 1), { ...density(2, 2, 2), id: 'mass', label: 'Mass, g' }]]);
    expect(group?.rows.map((row) => [row.id, row.differs, row.cells.map((cell) => cell?.text ?? null)])).toEqual([
      ['density', false, ['1.000', '1.000']],
      ['mass', true, [null, '2.000']],
    ]);
  });
});

describe('the choice in the address', () => {
  test('each sheet once, four at most, the rest named', () => {
    expect(comparedSlugs('a, b,a,c,d,e,')).toEqual({ slugs: ['a', 'b', 'c', 'd'], leftOut: ['e'] });
    expect(comparedSlugs(null)).toEqual({ slugs: [], leftOut: [] });
  });
});

describe('pairs with a page of their own', () => {
  const near = (of: Readonly<Record<string, string>>) => new Map(Object.entries(of).map(([slug, nearest]) => [slug, [{ slug: nearest }]]));

  test('each sheet with the one most like it: one page where each is the other’s nearest, none for a sheet like no other', () => {
    const sheets = ['d', 'c', 'b', 'a', 'x'].map((slug) => inventedSheet({ slug }));
    const pairs = nearestPairs(sheets, near({ a: 'b', b: 'a', c: 'b', d: 'gone' }));
    expect(pairs.map((pair) => pair.address)).toEqual(['b-and-c', 'a-and-b']);
  });

  test('two pairs never share an address', () => {
    const names = ['a', 'a-and-b', 'b', 'b-and-b', 'c'];
    const sheets = names.map((slug) => inventedSheet({ slug }));
    const pairs = nearestPairs(sheets, near({ a: 'b-and-b', 'a-and-b': 'b', c: 'a' }));
    expect(pairs.map(({ address, one }) => [address, one.slug])).toEqual([
      ['a-and-b-and-b', 'a'],
      ['a-and-c', 'a'],
    ]);
    const byAddress = new Map(pairs.map((pair) => [pair.address, pair]));
    expect(pairOf('a', 'b-and-b', byAddress)).toBe('a-and-b-and-b');
    expect(pairOf('b', 'a-and-b', byAddress)).toBeNull();
  });
});

describe('lettered circles on a strip', () => {
  test('keep their order, keep apart and stay on the strip', () => {
    const places = pushedApart([100, 101, 99, 160], 20, 10, 166);
    const sorted = [places[2], places[0], places[1], places[3]].map((place) => place ?? 0);
    expect(sorted).toEqual([...sorted].sort((one, other) => one - other));
    for (const [index, place] of sorted.slice(1).entries()) expect(place - (sorted[index] ?? 0)).toBeGreaterThanOrEqual(19.999);
    expect(Math.min(...sorted)).toBeGreaterThanOrEqual(10);
    expect(Math.max(...sorted)).toBeLessThanOrEqual(166.001);
  });
});
