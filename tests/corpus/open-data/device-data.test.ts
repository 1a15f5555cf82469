import { Ajv2020 } from 'ajv/dist/2020.js';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { deviceData } from '../../../src/corpus/open-data/device-data.ts';
import { deviceJsonSchema } from '../../../src/corpus/open-data/device-schema.ts';
import { partIds } from '../../../src/corpus/open-data/part-ids.ts';
import type { PublishedPhoto } from '../../../src/corpus/published-photo.ts';
import type { Entry } from '../../../src/entry/entry.ts';
import { entriesIn } from '../../demo/entries-in.ts';

const ENTRIES = entriesIn(join(import.meta.dirname, '../../../demo/teardowns'));
// JSON Schema, draft 2020-12, judged by a reference implementation of that standard.
const validate = new Ajv2020({ strict: true, strictTypes: false, allErrors: true }).compile(deviceJsonSchema());

/** Every photo as published with 2400 × 1500 pixels. */
function photosOf(entry: Entry): readonly PublishedPhoto[] {
  return entry.photos.map(({ file }) => ({ file, width: 2400, height: 1500, digest: 'd', sources: [] }));
}

describe('the file of one device', () => {
  test.each(ENTRIES)('$slug fits the published schema', ({ entry, derived }) => {
    const data: unknown = JSON.parse(JSON.stringify(deviceData(entry, derived, photosOf(entry))));
    expect(validate(data), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
  });

  test('every derived number carries its evidence, and a computed one its formula with all that went in', () => {
    for (const { entry, derived } of ENTRIES) {
      for (const [name, known] of Object.entries(deviceData(entry, derived, photosOf(entry)).derived)) {
        if ('missing' in known) expect(known.missing, name).not.toBe('');
        else if (known.evidence === 'computed') expect(Object.keys(known.inputs ?? {}).length, name).toBeGreaterThan(0);
        else expect(known.written ?? known.reason, name).not.toBeUndefined();
      }
    }
  });

  test('a length read out of a photo stands with its interval, its working and where it was read', () => {
    const withLengths = ENTRIES.find(({ entry }) => entry.photos.some(({ distances }) => distances.length > 0));
    if (withLengths === undefined) throw new Error('no demo entry measures in a photo');
    const { entry, derived } = withLengths;
    const marked = entry.photos.findIndex(({ distances }) => distances.length > 0);
    const photo = deviceData(entry, derived, photosOf(entry)).photos[marked];
    const [distance] = entry.photos[marked]?.distances ?? [];
    const [read] = photo?.lengths ?? [];
    expect(photo?.photo).toBe(marked + 1);
    expect(photo?.scale?.length.unit).toBe('m');
    expect(read).toMatchObject({ name: distance?.name, from: distance?.from, to: distance?.to });
    if (read === undefined || 'missing' in read.length) throw new Error('the length is withheld');
    expect(read.length).toMatchObject({ unit: 'm', evidence: 'computed', formula: 'photo-length' });
    expect(Object.keys(read.length.inputs ?? {}).sort()).toEqual(['marked', 'reference', 'scale', 'tilt']);
    expect(read.length.low).toBeLessThan(read.length.value);
    expect(read.length.high).toBeGreaterThan(read.length.value);
  });

  test('of a photo that was not published the lengths are withheld, with the reason', () => {
    const photos = ENTRIES.flatMap(({ entry, derived }) => deviceData(entry, derived, []).photos);
    const lengths = photos.flatMap((photo) => photo.lengths);
    expect(lengths.length).toBeGreaterThan(0);
    for (const { length } of lengths) expect(length).toMatchObject({ missing: 'the photo was not published' });
    expect(new Set(photos.map(({ width }) => width))).toEqual(new Set([null]));
  });

  test('a file with a field that the schema does not know, or a number without evidence, is refused', () => {
    const [first] = ENTRIES;
    if (first === undefined) throw new Error('no entry');
    const data = deviceData(first.entry, first.derived, photosOf(first.entry));
    expect(validate({ ...data, colour: 'black' })).toBe(false);
    expect(validate({ ...data, derived: { density: { value: 1, low: 1, high: 1, unit: 'W/m³', significant: 2 } } })).toBe(false);
  });

  test('names of parts are keys: none stands twice', () => {
    for (const { entry } of ENTRIES) expect(new Set(partIds(entry)).size).toBe(entry.parts.length);
  });
});
