import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { beforeAll, describe, expect, test } from 'vitest';
import { photosSection, withPhotos } from '../../demo-pictures/photos-section.ts';
import { picturesOf, type DevicePicture } from '../../demo-pictures/pictures-of.ts';
import { placeParts } from '../../demo-pictures/place-parts.ts';
import { readFace } from '../../src/pipeline/face-outlines.ts';
import { bySlug, entriesIn } from './entries-in.ts';

const FOLDER = join(import.meta.dirname, '../../demo/teardowns');
const ENTRIES = entriesIn(FOLDER);
const drawn = new Map<string, readonly DevicePicture[]>();

beforeAll(() => {
  const lettering = { faces: [readFace('mono'), readFace('symbols')] };
  for (const { slug, entry } of ENTRIES) drawn.set(slug, picturesOf(entry, lettering));
}, 60_000);

const picturesFor = (slug: string): readonly DevicePicture[] => drawn.get(slug) ?? [];

describe('pictures of the demo are drawn from their entries', () => {
  test.each(ENTRIES)('$slug shows its case and its board', ({ slug, entry }) => {
    const files = entry.photos.map(({ file }) => file);
    expect(files.slice(0, 2)).toEqual(['exterior.jpg', 'board-top.jpg']);
    expect(readdirSync(join(FOLDER, slug)).filter((name) => name.endsWith('.jpg')).sort()).toEqual([...files].sort());
  });

  test('the 65 W and the 140 W show the other side of their boards too', () => {
    for (const slug of ['skelderby-trine-65', 'ostlewick-lantern-140']) {
      expect(bySlug(ENTRIES, slug).entry.photos.map(({ file }) => file)).toContain('board-bottom.jpg');
    }
  });

  test.each(ENTRIES)('the section of $slug is what the drawing gives, and writing it again changes nothing', ({ slug }) => {
    const text = readFileSync(join(FOLDER, slug, 'index.md'), 'utf8');
    expect(withPhotos(text, photosSection(picturesFor(slug).map(({ lines }) => lines)))).toBe(text);
  });

  test.each(ENTRIES)('every callout of $slug lies on the body of its part', ({ slug, entry }) => {
    for (const [index, photo] of entry.photos.entries()) {
      const bodies = picturesFor(slug)[index]?.drawn.bodies;
      for (const { part, x, y } of photo.callouts) {
        const area = bodies?.get(part);
        if (area === undefined) throw new Error(`${photo.file} shows no ${part}`);
        expect({ part, on: x > area.x && x < area.x + area.width && y > area.y && y < area.y + area.height }).toEqual({ part, on: true });
      }
    }
  });

  test.each(ENTRIES)('a board of $slug has six to twelve callouts, on as many parts', ({ entry }) => {
    for (const { file, callouts } of entry.photos.filter(({ file: name }) => name.startsWith('board'))) {
      expect({ file, enough: callouts.length >= 6 && callouts.length <= 12 }).toEqual({ file, enough: true });
      expect(new Set(callouts.map(({ part }) => part)).size).toBe(callouts.length);
    }
  });

  test.each(ENTRIES)('what bridges the insulation of $slug lands outside the distance that the entry measured', ({ entry }) => {
    const { plan, top } = placeParts(entry, false);
    const measured = Math.max(0, ...entry.insulation.map(({ creepage }) => (creepage?.quantity.nominal ?? 0) * 1e3));
    for (const { reference, part, area } of top.filter(({ part: { role } }) => /^(?:transformer|optocoupler|y-capacitor)$/u.test(role))) {
      const x = plan.barrier?.x ?? 0;
      const sides = [x - area.x, area.x + area.width - x].map((reach) => reach > measured / 2);
      expect({ reference, role: part.role, sides }).toEqual({ reference, role: part.role, sides: [true, true] });
    }
  });

  test.each(ENTRIES)('no two bodies of $slug stand in the same place', ({ slug }) => {
    for (const { drawn: picture } of picturesFor(slug)) {
      const areas = [...picture.bodies];
      const meeting = areas.flatMap(([one, a], index) =>
        areas
          .slice(index + 1)
          .filter(([, b]) => a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height)
          .map(([other]) => `${one} and ${other}`),
      );
      expect(meeting).toEqual([]);
    }
  });
});

describe('the files', () => {
  const files = ENTRIES.flatMap(({ slug, entry }) => entry.photos.map(({ file }) => join(FOLDER, slug, file)));

  test('are 150 to 400 kB each, and under 6 MB together', () => {
    const sizes = files.map((file) => statSync(file).size);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(150_000);
    expect(Math.max(...sizes)).toBeLessThanOrEqual(400_000);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(6_000_000);
  });

  test.each(files)('%s is a JPEG of 2400 × 1800 without metadata', async (file) => {
    const { format, width, height, exif, xmp, iptc } = await sharp(file).metadata();
    expect({ format, width, height, exif, xmp, iptc }).toEqual({ format: 'jpeg', width: 2400, height: 1800, exif: undefined, xmp: undefined, iptc: undefined });
  });
});

describe('the scale bar in the picture', () => {
  /** Devices with one board, whose edge is 2.2 mm inside each edge of the body. */
  const boards = ['fennimoor-deskway-100', 'marlhythe-causeway-100', 'ostlewick-lantern-140'];

  test.each(boards)('of %s is as long as it says, beside the edge of the board', async (slug) => {
    const { entry } = bySlug(ENTRIES, slug);
    const photo = entry.photos.find(({ file }) => file === 'board-top.jpg');
    const size = entry.body.size?.size;
    if (photo?.scale === null || photo?.scale === undefined || size?.shape !== 'box') throw new Error(`${slug} has no scale`);
    const { data, info } = await sharp(join(FOLDER, slug, photo.file)).raw().toBuffer({ resolveWithObject: true });
    const pixel = (x: number, y: number): readonly number[] => [...data.subarray((y * info.width + x) * info.channels, (y * info.width + x) * info.channels + 3)];
    /** Pixels from the first to the last that is like that, in the longest stretch without a gap wider than `gap`. */
    const stretch = (y: number, gap: number, like: (colour: readonly number[]) => boolean): number => {
      let [longest, from, last] = [0, 0, -Infinity];
      for (let x = 0; x < info.width; x++) {
        if (!like(pixel(x, y))) continue;
        if (x - last > gap + 1) from = x;
        last = x;
        longest = Math.max(longest, last - from + 1);
      }
      return longest;
    };
    const bar = stretch(Math.round(photo.scale.from[1] * info.height), 2, ([red = 255, green = 255]) => red < 70 && green < 70);
    // Sockets stand over the right edge, so the widest row of green is one between them.
    const isMask = ([red = 0, green = 0, blue = 0]: readonly number[]): boolean => green > 1.5 * red && green > blue;
    const rows = Array.from({ length: 40 }, (_, index) => Math.round(info.height * (0.05 + 0.018 * index)));
    const board = Math.max(...rows.map((row) => stretch(row, info.width, isMask)));
    const boardMillimetres = size.edges[0].nominal * 1e3 - 2 * 2.2;
    const barMillimetres = (bar / board) * boardMillimetres;
    const stated = photo.scale.length.quantity.nominal * 1e3;
    // Two edges, each read to a pixel or two of softness.
    expect(Math.abs(barMillimetres - stated)).toBeLessThan(0.01 * stated);
    // The points that the entry gives are the ends of the bar.
    expect(Math.abs((photo.scale.to[0] - photo.scale.from[0]) * info.width - bar)).toBeLessThanOrEqual(3);
  });
});
