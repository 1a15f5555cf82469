import fc from 'fast-check';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { generateFamilies } from '../../../bench/generated-families.ts';
import { precisionAndRecall } from '../../../bench/likeness.ts';
import type { CorpusSheet } from '../../../src/corpus/corpus-sheet.ts';
import { likenessOf } from '../../../src/corpus/likeness/likeness-of.ts';
import { nearestSheets, type NearSheet } from '../../../src/corpus/likeness/nearest-sheets.ts';
import { prepare } from '../../../src/pipeline/prepare.ts';
import { tokenIndex } from '../../../src/corpus/likeness/token-index.ts';
import { inventedPart, inventedSheet } from '../invented-sheet.ts';

describe('the two labels of the demo bench that stand on one platform', () => {
  let nearest: ReadonlyMap<string, readonly NearSheet[]> = new Map();
  beforeAll(async () => {
    const work = mkdtempSync(join(tmpdir(), 'seamline-test-'));
    const folders = { content: join(import.meta.dirname, '../../../demo'), prepared: join(work, 'prepared'), cache: join(work, 'cache') };
    const { manifest } = await prepare({ ...folders, mode: 'build' });
    rmSync(work, { recursive: true });
    nearest = nearestSheets(manifest.sheets);
  });
  const first = (slug: string) => nearest.get(slug)?.[0];

  test('each is the nearest of the other, with one likeness', () => {
    expect(first('marlhythe-causeway-100')?.slug).toBe('fennimoor-deskway-100');
    expect(first('fennimoor-deskway-100')?.slug).toBe('marlhythe-causeway-100');
    expect(first('marlhythe-causeway-100')?.likeness).toBe(first('fennimoor-deskway-100')?.likeness);
  });

  test('the evidence names both controllers and the layout of the four ports', () => {
    expect(first('marlhythe-causeway-100')?.evidence.words).toEqual(
      expect.arrayContaining(['same controllers VLR-27S, VLR-81C', 'same four-port layout']),
    );
  });

  test('they are one platform, and what differs is label, size and two capacitors', () => {
    expect(first('marlhythe-causeway-100')?.platform?.differs).toEqual([
      'label Marlhythe, there Fennimoor',
      'size 84 × 62 × 30 mm, there 88 × 60 × 31 mm',
      'output capacitor 330 µF, there 470 µF',
      'bulk capacitor HMR-KX-100-450, there HMR-KV-100-420',
      'output capacitor HMR-PX-330-35, there HMR-PV-470-25',
    ]);
  });

  test('no other pair of the bench is called one platform', () => {
    const pairs = [...nearest].flatMap(([slug, near]) =>
      near.filter((sheet) => sheet.platform !== null).map((sheet) => [slug, sheet.slug]),
    );
    expect(pairs.flat().sort()).toEqual([
      'fennimoor-deskway-100',
      'fennimoor-deskway-100',
      'marlhythe-causeway-100',
      'marlhythe-causeway-100',
    ]);
  });
});

describe('families with known answers', () => {
  test('of 600 sheets, most of the five shown come from the same platform, and most of those are shown', () => {
    const families = generateFamilies(600);
    const { precision, recall } = precisionAndRecall(families, nearestSheets(families.sheets));
    expect(precision).toBeGreaterThan(0.75);
    expect(recall).toBeGreaterThan(0.75);
  });

  test('of 900 sheets, the nearest one found by the index is the nearest of all in 99 of 100', () => {
    const { sheets } = generateFamilies(900, 5);
    const nearest = nearestSheets(sheets);
    const index = tokenIndex(sheets);
    const agreeing = index.sheets.filter((one) => {
      const best = Math.max(...index.sheets.map((other) => (other === one ? 0 : likenessOf(index, one, other))));
      return nearest.get(one.sheet.slug)?.[0]?.likeness === Math.round(best * 100) / 100;
    });
    expect(agreeing.length).toBeGreaterThanOrEqual(0.99 * sheets.length);
  });

  test('the order in which sheets are read changes nothing', () => {
    const { sheets } = generateFamilies(90, 11);
    const reference = JSON.stringify([...nearestSheets(sheets)].sort());
    fc.assert(
      fc.property(fc.shuffledSubarray([...sheets], { minLength: sheets.length, maxLength: sheets.length }), (shuffled) => {
        expect(JSON.stringify([...nearestSheets(shuffled)].sort())).toBe(reference);
      }),
      { seed: 20260314, numRuns: 5 },
    );
  });
});

describe('where there is nothing to say', () => {
  test('a single sheet, and sheets that share what all have, have no near ones', () => {
    const alike = ['a', 'b', 'c'].map((slug) => inventedSheet({ slug }));
    expect([...nearestSheets([inventedSheet({ slug: 'a' })]).values()]).toEqual([[]]);
    expect([...nearestSheets(alike).values()]).toEqual([[], [], []]);
  });

  test('one chip in 5000 sheets does not make all of them near each other, nor the work square', () => {
    const parts = [inventedPart({ number: 'VLR-1' })];
    const sheets: readonly CorpusSheet[] = Array.from({ length: 5000 }, (_, index) => inventedSheet({ slug: `s${String(index)}`, parts }));
    expect([...nearestSheets(sheets).values()].every((near) => near.length === 0)).toBe(true);
  });
});

describe('one platform needs strong evidence', () => {
  const values = ['bulk-capacitor', 'output-capacitor', 'y-capacitor', 'x-capacitor'].map((kind) => ({ kind, words: '10 µF' }));
  const controllers = [inventedPart({ number: 'VLR-1' })];
  const base = inventedSheet({ slug: 'other', glyphs: ['flyback'], parts: [inventedPart({ number: 'VLR-9' })] });
  const verdictOn = (one: CorpusSheet, other: CorpusSheet): boolean =>
    nearestSheets([one, other, base]).get(one.slug)?.[0]?.platform !== null;

  test('the same controller alone, with nothing known of the values, is not enough', () => {
    const [one, other] = ['a', 'b'].map((slug) => inventedSheet({ slug, parts: controllers }));
    expect(one !== undefined && other !== undefined && verdictOn(one, other)).toBe(false);
  });

  test('the same controller, stages and four values are', () => {
    const [one, other] = ['a', 'b'].map((slug) => {
      const sheet = inventedSheet({ slug, parts: controllers });
      return { ...sheet, traits: { ...sheet.traits, values } };
    });
    expect(one !== undefined && other !== undefined && verdictOn(one, other)).toBe(true);
  });
});
