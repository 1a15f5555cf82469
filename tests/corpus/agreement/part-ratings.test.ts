import { describe, expect, test } from 'vitest';
import { partRatingRemarks } from '../../../src/corpus/agreement/part-ratings.ts';
import { makerSpellingRemarks, partSpellingRemarks } from '../../../src/corpus/agreement/spellings.ts';
import type { StatedPart } from '../../../src/corpus/agreement/stated-text.ts';
import { factsByNumber } from '../../../src/corpus/part-facts/part-facts.ts';

const NO_FACTS = factsByNumber([]);

function stated(slug: string, number: string, rating: string | null = null): StatedPart {
  const place = { slug, file: `teardowns/${slug}/index.md`, path: ['parts', 'main', 'Q1', 'rating'], cell: null };
  return { place, number, maker: null, rating, role: 'buck-switch', subject: 'Q1' };
}

const said = (parts: readonly StatedPart[]): readonly string[] =>
  partRatingRemarks(parts, NO_FACTS).map(
    ({ at, message, others }) => `${at.slug}: ${message} (${others.map((other) => other.slug).join()})`,
  );

describe('one number with two ratings', () => {
  test('is said in each entry, with the places of the others', () => {
    expect(said([stated('a', 'DVF-1', '40 V, 5.5 mΩ'), stated('b', 'DVF-1', '40 V, 6.2 mΩ')])).toEqual([
      'a: Q1: DVF-1 is 40 V, 5.5 mΩ here and 40 V, 6.2 mΩ elsewhere (b)',
      'b: Q1: DVF-1 is 40 V, 6.2 mΩ here and 40 V, 5.5 mΩ elsewhere (a)',
    ]);
  });

  test('is said once an entry, however often the part stands in it', () => {
    expect(said([stated('a', 'DVF-1', '40 V'), stated('a', 'DVF-1', '40 V'), stated('b', 'DVF-1', '30 V')]).length).toBe(2);
  });

  test('is nothing where the writings agree, or one states more than the other', () => {
    expect(said([stated('a', 'DVF-1', '40 V, 5.5 mΩ'), stated('b', 'DVF-1', '5.5mΩ / 40V'), stated('c', 'DVF-1', '40 V')])).toEqual([]);
  });

  test('of a part used 5000 times is said in one of the many and in the one that differs', () => {
    const many = Array.from({ length: 5000 }, (_, index) => stated(`s${String(index)}`, 'DVF-1', '40 V'));
    expect(partRatingRemarks([...many, stated('odd', 'DVF-1', '30 V')], NO_FACTS).map(({ at }) => at.slug)).toEqual(['s0', 'odd']);
  });
});

describe('two spellings of one thing are proposed as one', () => {
  test.each([
    ['OC4082', 'OC-4082', true],
    ['OC4082', 'oc4082', true],
    ['NBK-7A140', 'NBK-7A140-TR', true],
    ['NBK-7A140', 'NBK-7A140 (TR)', true],
    ['NBK-7A140', 'NBK-7A140#PBF', true],
    ['DVF-L405', 'DVF-L405,115', true],
    ['NBK-7A140', 'NBK-7A140R', false],
    ['DVF-L405', 'DVF-L406', false],
    ['NBK-118', 'NBK-115', false],
    ['VLR-LF', 'VLR', false],
  ])('%s and %s: %s', (one, other, proposed) => {
    expect(partSpellingRemarks([stated('a', one), stated('b', other)], NO_FACTS).length).toBe(proposed ? 2 : 0);
  });

  test('in the entry with the rarer spelling only', () => {
    const remarks = partSpellingRemarks([stated('a', 'OC-4082'), stated('b', 'OC-4082'), stated('c', 'OC4082')], NO_FACTS);
    expect(remarks.map(({ at, message }) => `${at.slug}: ${message}`)).toEqual(['c: Q1: OC4082 is perhaps the same part as OC-4082']);
  });

  test('in twenty entries at most, however many use either spelling', () => {
    const many = Array.from({ length: 400 }, (_, index) => stated(`s${String(index)}`, index % 2 === 0 ? 'OC-4082' : 'OC4082'));
    expect(partSpellingRemarks(many, NO_FACTS).length).toBe(40);
  });

  test('no longer where a fact sheet lists the spelling', () => {
    const sheet = {
      number: 'OC-4082',
      alsoWritten: ['OC4082'],
      stated: {},
      note: null,
      corrections: [],
      file: 'parts/x.yaml',
      lines: {},
      hash: '',
    };
    expect(partSpellingRemarks([stated('a', 'OC-4082'), stated('b', 'OC4082')], factsByNumber([sheet]))).toEqual([]);
  });

  test.each([
    ['Velloric', 'VELLORIC', true],
    ['Velloric', 'Velloric Co., Ltd.', true],
    ['Kiln Lane', 'KilnLane', true],
    ['Velloric', 'Velloric', false],
    ['Costa', 'Costa Inc', true],
  ])('makers %s and %s: %s', (one, other, proposed) => {
    const { place } = stated('a', 'x');
    const makers = [
      { name: one, place },
      { name: other, place: { ...place, slug: 'b' } },
    ];
    expect(makerSpellingRemarks(makers).length).toBe(proposed ? 2 : 0);
  });
});
