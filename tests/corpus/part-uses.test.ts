import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { partUses } from '../../src/corpus/part-uses.ts';
import { inventedPart, inventedSheet } from './invented-sheet.ts';

const bulk = (rating: string): ReturnType<typeof inventedPart> =>
  inventedPart({ number: 'KXE-82', maker: 'Norrund', role: 'bulk-capacitor', stage: 'pfc', references: ['C5'], rating });

describe('where a part number is used', () => {
  it('names every sheet, newest first, with reference, stage and rating as found', () => {
    const [page] = partUses([
      inventedSheet({ slug: 'old', published: '2025-01-02', parts: [bulk('82 µF 400 V')] }),
      inventedSheet({ slug: 'new', published: '2026-01-02', parts: [bulk('82 µF 420 V')] }),
    ]);
    expect(page?.uses.map((use) => [use.sheet.slug, use.references, use.stage, use.rating])).toEqual([
      ['new', ['C5'], 'pfc', '82 µF 420 V'],
      ['old', ['C5'], 'pfc', '82 µF 400 V'],
    ]);
    expect(page?.sheetCount).toBe(2);
  });

  it('marks a number that carries two voltages', () => {
    const [page] = partUses([
      inventedSheet({ slug: 'a', parts: [bulk('82 µF 400 V')] }),
      inventedSheet({ slug: 'b', parts: [bulk('82 µF 420 V, 105 °C')] }),
    ]);
    expect(page?.differing).toEqual(['voltage']);
  });

  it.each([
    ['82 µF 420 V', '420 V / 82 µF'],
    ['82 µF 420 V', '82uF 420V'],
    ['82 µF 420 V', '420 V'],
    ['82 µF 420 V', '2 × 82 µF 420 V'],
    ['700 V, 140 mΩ', '140 mΩ'],
  ])('%s and %s do not contradict each other', (one, other) => {
    const [page] = partUses([inventedSheet({ slug: 'a', parts: [bulk(one)] }), inventedSheet({ slug: 'b', parts: [bulk(other)] })]);
    expect(page?.differing).toEqual([]);
  });

  it('proposes other spellings of a number and never merges them', () => {
    const pages = partUses([
      inventedSheet({ slug: 'a', parts: [inventedPart({ number: 'OC4082' }), inventedPart({ number: 'OC-4082' })] }),
      inventedSheet({ slug: 'b', parts: [inventedPart({ number: 'oc4082' }), inventedPart({ number: 'OC4083' })] }),
    ]);
    expect(pages.map((page) => page.number)).toEqual(['OC-4082', 'OC4082', 'OC4083', 'oc4082']);
    expect(pages.map((page) => page.perhapsSame.map((other) => other.number))).toEqual([
      ['OC4082', 'oc4082'],
      ['OC-4082', 'oc4082'],
      [],
      ['OC-4082', 'OC4082'],
    ]);
  });

  it('keeps two makers of one number apart by name on one page', () => {
    const [page, ...others] = partUses([
      inventedSheet({
        slug: 'a',
        parts: [inventedPart({ number: '1N4007', maker: 'Volmar' }), inventedPart({ number: '1N4007', maker: 'Ostrel' })],
      }),
      inventedSheet({ slug: 'b', parts: [inventedPart({ number: '1N4007', maker: null })] }),
    ]);
    expect(others).toEqual([]);
    expect(page?.makers).toEqual(['Ostrel', 'Volmar']);
  });

  it('loses no use and shares no address, whatever the numbers', () => {
    const number = fc.string({ unit: fc.constantFrom('a', 'A', '0', '-', '/', ' '), minLength: 1, maxLength: 4 });
    const sheet = fc.array(number, { maxLength: 20 }).map((numbers) => numbers.map((text) => inventedPart({ number: text })));
    fc.assert(
      fc.property(fc.array(sheet, { maxLength: 20 }), (boards) => {
        const pages = partUses(boards.map((parts, index) => inventedSheet({ slug: `s${String(index)}`, parts })));
        expect(pages.flatMap((page) => page.uses)).toHaveLength(boards.flat().length);
        expect(new Set(pages.map((page) => page.address)).size).toBe(pages.length);
        for (const page of pages)
          for (const other of page.perhapsSame) expect(pages.some(({ number: text }) => text === other.number)).toBe(true);
      }),
      { seed: 23, numRuns: 100 },
    );
  });
});
