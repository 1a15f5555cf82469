import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { entriesIn, saidOf } from './entries-in.ts';

const ENTRIES = entriesIn(join(import.meta.dirname, '../../demo/teardowns'));

describe('every sheet of the demo bench is whole', () => {
  test('there are eight', () => {
    expect(ENTRIES.map(({ slug }) => slug)).toEqual([
      'crossgarth-bothy-45',
      'fennimoor-deskway-100',
      'marlhythe-causeway-100',
      'ostlewick-lantern-140',
      'skelderby-trine-65',
      'tillmere-nub-20',
      'wendlestone-fairlead-92',
      'yarrowdene-stub-30',
    ]);
  });

  test.each(ENTRIES)('$slug reads without an error', (sheet) => {
    expect(saidOf(sheet, ['error'])).toEqual([]);
  });

  test.each(ENTRIES)('$slug names 25 to 60 parts', ({ entry }) => {
    const named = entry.parts.filter((part) => part.fitting === 'fitted').flatMap((part) => part.references);
    expect(named.length).toBeGreaterThanOrEqual(25);
    expect(named.length).toBeLessThanOrEqual(60);
  });

  test.each(ENTRIES)('$slug has 500 to 1000 words of text', ({ text }) => {
    const words = text.split(/\s+/u).filter((word) => word !== '');
    expect(words.length).toBeGreaterThanOrEqual(500);
    expect(words.length).toBeLessThanOrEqual(1000);
  });

  test('every sheet has its own number with the prefix of the bench', () => {
    const numbers = ENTRIES.map(({ entry }) => entry.number ?? '');
    expect(new Set(numbers).size).toBe(ENTRIES.length);
    for (const number of numbers) expect(number).toMatch(/^RWB-\d{4}$/u);
  });
});

describe('what recurs across the bench', () => {
  const uses = new Map<string, Set<string>>();
  for (const { slug, entry } of ENTRIES) {
    for (const part of entry.parts) if (part.number !== null) uses.set(part.number, (uses.get(part.number) ?? new Set()).add(slug));
  }

  test('at least ten part numbers stand in three sheets or more', () => {
    expect([...uses.values()].filter((slugs) => slugs.size >= 3).length).toBeGreaterThanOrEqual(10);
  });

  test('one number of all has two ratings, as two data sheets give it', () => {
    const ratings = new Map<string, Set<string>>();
    for (const { entry } of ENTRIES) {
      for (const part of entry.parts) {
        if (part.number === null || part.rating === null) continue;
        const written = part.rating.quantities.map((quantity) => `${quantity.dimension} ${String(quantity.nominal)}`).join(', ');
        ratings.set(part.number, (ratings.get(part.number) ?? new Set()).add(written));
      }
    }
    expect([...ratings].filter(([, lines]) => lines.size > 1).map(([number]) => number)).toEqual(['DVF-L405']);
  });

  test('two labels stand on one platform: same controllers, turns and bus, another maker, size and bulk capacitor', () => {
    const [first, second] = ['fennimoor-deskway-100', 'marlhythe-causeway-100'].map((slug) => {
      const sheet = ENTRIES.find((candidate) => candidate.slug === slug);
      if (sheet === undefined) throw new Error(slug);
      const { entry } = sheet;
      return {
        controllers: entry.parts.filter((part) => part.role.endsWith('controller')).map((part) => part.number),
        turns: entry.stages.map((stage) => stage.turns),
        bus: entry.stages.map((stage) => stage.parameters['bus']?.quantity.nominal),
        maker: entry.device.maker,
        size: entry.body.size?.size.written,
        bulk: entry.parts.find((part) => part.role === 'bulk-capacitor')?.number,
      };
    });
    expect(first?.controllers).toEqual(second?.controllers);
    expect(first?.turns).toEqual(second?.turns);
    expect(first?.bus).toEqual(second?.bus);
    expect(first?.maker).not.toBe(second?.maker);
    expect(first?.size).not.toBe(second?.size);
    expect(first?.bulk).not.toBe(second?.bulk);
  });
});
