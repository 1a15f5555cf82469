import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { PreparedSheet } from '../../src/corpus/prepared.ts';
import { drawSheet } from '../../src/render/draw-sheet.ts';
import { entriesIn } from '../demo/entries-in.ts';

const sheets: readonly PreparedSheet[] = entriesIn(join(import.meta.dirname, '../../demo/teardowns')).map(({ entry, derived }) => ({
  ...{ entry, derived, tables: [], placed: [], html: '', headings: [], diagnostics: [] },
  photos: entry.photos.map(({ file }) => ({ file, width: 2400, height: 1800, digest: 'd', sources: [] })),
}));

function drawn(sheet: PreparedSheet): string {
  return drawSheet(sheet)
    .zones.map(({ side, matter }) => side + matter)
    .join('');
}

function all(html: string, pattern: RegExp): readonly string[] {
  return [...html.matchAll(pattern)].map(([, found]) => found ?? '');
}

describe.each(sheets.map((sheet) => [sheet.entry.slug, sheet] as const))('photos of %s', (_, sheet) => {
  const html = drawn(sheet);
  const ids = new Set(all(html, /\sid="([^"]+)"/g));

  test('every callout is drawn around the photo and on it, and leads to its row', () => {
    const callouts = sheet.entry.photos.flatMap((photo) => photo.callouts);
    const items = all(html, /<a class="ph-item" href="#([^"]+)"/g);
    expect(items).toHaveLength(2 * callouts.length);
    expect(items.filter((anchor) => !ids.has(anchor))).toEqual([]);
  });

  test('every row of a part that a photo points to leads to the photo, with the number that the photo shows', () => {
    const marks = all(html, /<a class="item" href="#([^"]+)"/g);
    expect(marks.filter((anchor) => !ids.has(anchor))).toEqual([]);
    const called = new Set(sheet.entry.photos.flatMap(({ callouts }) => callouts.map(({ part }) => part)));
    const rows = sheet.entry.parts.filter(({ references }) => references.some((reference) => called.has(reference)));
    expect(marks).toHaveLength(rows.length);
    const inPhotos = all(html, /<a class="ph-item" href="#[^"]+" data-item="(\d+)"/g);
    const inRows = all(html, /<a class="item" href="#[^"]+" aria-label="Item (\d+),/g);
    expect([...new Set(inPhotos)].sort()).toEqual([...new Set(inRows)].sort());
  });

  test('item numbers run 1, 2, 3 down the part table', () => {
    const numbers = all(html, /<(?:a|span) class="item"[^>]*>(\d+)</g).map(Number);
    expect(numbers).toEqual(sheet.entry.parts.map((_part, index) => index + 1));
  });

  test('each photo has its 24 zones as places that prose can lead to, and no id twice', () => {
    for (const index of sheet.entry.photos.keys()) {
      const zones = [...ids].filter((id) => new RegExp(`^photo-${index + 1}-[A-D][1-6]$`).test(id));
      expect(zones).toHaveLength(24);
    }
    expect(all(html, /\sid="([^"]+)"/g)).toHaveLength(ids.size);
  });
});

test('a photo that could not be published keeps its number, its zones and its words', () => {
  const [first] = sheets;
  if (first === undefined) throw new Error('no demo entry');
  const html = drawn({ ...first, photos: first.entry.photos.map(() => null) });
  expect(html).toContain('id="photo-1-B4"');
  expect(html).toContain('Not published.');
});

test('without callouts the part table has no item numbers', () => {
  const [first] = sheets;
  if (first === undefined) throw new Error('no demo entry');
  const bare = { ...first, entry: { ...first.entry, photos: first.entry.photos.map((photo) => ({ ...photo, callouts: [] })) } };
  expect(drawn(bare)).not.toContain('class="item"');
});

test('where a phone has its numbers on small plates, they stand under the photo with reference and role', () => {
  const sheet = sheets.find(({ entry }) => entry.parts.length > 45);
  const [photo] = sheet?.entry.photos ?? [];
  if (sheet === undefined || photo === undefined) throw new Error('no demo entry with so many parts');
  const parts = sheet.entry.parts.slice(0, 45).map(({ references }) => references[0] ?? '');
  const callouts = parts.map((part, at) => ({ ...(photo.callouts[0] ?? { path: [] }), part, x: (at * 0.618) % 1, y: (at * 0.755) % 1 }));
  const crowded = { ...sheet, entry: { ...sheet.entry, photos: [{ ...photo, callouts }] } } as PreparedSheet;
  const keys = all(drawn(crowded), /<ol class="ph-keys">(.*?)<\/ol>/g).join('');
  expect(keys.match(/<li>/g)).toHaveLength(45);
  const [fuse] = sheet.entry.parts;
  expect(keys).toContain(`<b>1</b> <span class="mono">${fuse?.references[0] ?? ''}</span>`);
  expect(drawn(sheet)).not.toContain('ph-keys');
});
