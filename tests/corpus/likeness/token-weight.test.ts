import { describe, expect, test } from 'vitest';
import { cosineOf, likenessOf } from '../../../src/corpus/likeness/likeness-of.ts';
import { KIND_WEIGHT } from '../../../src/corpus/likeness/likeness-token.ts';
import { likenessTokens } from '../../../src/corpus/likeness/likeness-tokens.ts';
import { rarity, tokenIndex } from '../../../src/corpus/likeness/token-index.ts';
import { generateFamilies } from '../../../bench/generated-families.ts';
import type { CorpusSheet } from '../../../src/corpus/corpus-sheet.ts';
import { inventedPart, inventedSheet } from '../invented-sheet.ts';

/** Sheets of which nothing is known but controllers. */
function withControllers(slug: string, ...numbers: readonly string[]): CorpusSheet {
  return inventedSheet({ slug, glyphs: [], parts: numbers.map((number) => inventedPart({ number })) });
}

/**
 * The weighting written plainly: a vector with a place for every token, its weight times the smoothed inverse document frequency, and the
 * cosine between two vectors. Source: G. Salton, C. Buckley, Term-weighting approaches in automatic text retrieval, Information Processing
 * & Management 24 (1988) 513; smoothing and weights by kind are our own.
 */
function plainCosine(sheets: readonly CorpusSheet[], one: CorpusSheet, other: CorpusSheet): number {
  const vocabulary = [...new Set(sheets.flatMap((sheet) => likenessTokens(sheet).map((token) => token.key)))];
  const vector = (sheet: CorpusSheet): readonly number[] =>
    vocabulary.map((key) => {
      const token = likenessTokens(sheet).find((candidate) => candidate.key === key);
      if (token === undefined) return 0;
      const holders = sheets.filter((candidate) => likenessTokens(candidate).some((each) => each.key === key)).length;
      return KIND_WEIGHT[token.kind] * Math.log((1 + sheets.length) / (1 + holders));
    });
  const [first, second] = [vector(one), vector(other)];
  const dot = (left: readonly number[], right: readonly number[]): number =>
    left.reduce((sum, each, index) => sum + each * (right[index] ?? 0), 0);
  const length = Math.sqrt(dot(first, first)) * Math.sqrt(dot(second, second));
  return length === 0 ? 0 : dot(first, second) / length;
}

describe('a rare part says more than a common one', () => {
  test('what every sheet has says nothing, what one of three has says ln 2', () => {
    expect(rarity(3, 3)).toBe(0);
    expect(rarity(3, 1)).toBe(Math.log(2));
  });

  test('three sheets by hand: A and B share U1, which C has not; all three have U0', () => {
    // Controllers weigh 1.6. U0: ln(4/4) = 0. U1: ln(4/3) in A and B. U2 in B and U3 in C: ln(4/2).
    // A = (U1), B = (U1, U2): cosine = ln(4/3) / sqrt(ln(4/3)² + ln(2)²) = 0.287682 / 0.750479 = 0.38333.
    const sheets = [withControllers('a', 'U0', 'U1'), withControllers('b', 'U0', 'U1', 'U2'), withControllers('c', 'U0', 'U3')];
    const index = tokenIndex(sheets);
    const [a, b, c] = index.sheets;
    if (a === undefined || b === undefined || c === undefined) throw new Error('three sheets');
    expect(cosineOf(index, a, b).toFixed(5)).toBe('0.38333');
    expect(cosineOf(index, a, c)).toBe(0);
    expect(cosineOf(index, b, b).toFixed(9)).toBe('1.000000000');
  });

  test('on sixty generated sheets the index gives the cosine of the plain vectors', () => {
    const { sheets } = generateFamilies(60, 7);
    const index = tokenIndex(sheets);
    for (const [at, one] of index.sheets.entries()) {
      const other = index.sheets[(at * 17 + 5) % index.sheets.length];
      if (other === undefined) continue;
      const plain = plainCosine(sheets, one.sheet, other.sheet);
      // Sums of some thirty products in another order: a few units in the sixteenth digit each.
      expect(Math.abs(cosineOf(index, one, other) - Math.min(1, plain))).toBeLessThan(1e-12);
    }
  });
});

describe('likeness', () => {
  test('is the same from either side, to the last bit, and between nothing and all', () => {
    const index = tokenIndex(generateFamilies(120, 3).sheets);
    for (const one of index.sheets) {
      for (const other of index.sheets.slice(0, 20)) {
        const likeness = likenessOf(index, one, other);
        expect(likeness).toBe(likenessOf(index, other, one));
        expect(likeness).toBeGreaterThanOrEqual(0);
        expect(likeness).toBeLessThanOrEqual(1);
      }
    }
  });

  test('one design in a case of twice the volume is a little less alike', () => {
    const parts = [inventedPart({ number: 'U1' })];
    const sheets = [
      inventedSheet({ slug: 'a', parts, outline: [60, 50, 30] }),
      inventedSheet({ slug: 'b', parts, outline: [60, 50, 30] }),
      inventedSheet({ slug: 'c', parts, outline: [60, 50, 60] }),
      withControllers('d', 'U9'),
    ];
    const index = tokenIndex(sheets);
    const [a, b, c] = index.sheets;
    if (a === undefined || b === undefined || c === undefined) throw new Error('four sheets');
    expect(likenessOf(index, a, b)).toBeGreaterThan(likenessOf(index, a, c));
    expect(likenessOf(index, a, c)).toBeGreaterThan(0.9 * likenessOf(index, a, b));
  });
});
