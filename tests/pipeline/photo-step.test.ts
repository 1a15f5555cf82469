import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp, { type Sharp } from 'sharp';
import { describe, expect, test } from 'vitest';
import { encodePhoto } from '../../src/pipeline/photos/encode-photo.ts';
import { inspectPhoto } from '../../src/pipeline/photos/inspect-photo.ts';
import { metadataIn } from '../../src/pipeline/photos/picture-metadata.ts';
import { LARGEST_PICTURE, pictureFaults, filesThatMayBePictures } from '../../src/pipeline/photos/output-pictures.ts';
import { readPhotoList } from '../../src/pipeline/photos/photo-list.ts';
import { prepare } from '../../src/pipeline/prepare.ts';
import { contentFolder, entryText, temporaryFolder } from './content-folder.ts';

/** A drawn picture: red above, blue below, so that its upper side can be told. */
function drawn(width: number, height: number): Sharp {
  const half = Math.floor(height / 2);
  const lower = { create: { width, height: height - half, channels: 3, background: '#2040c0' } } as const;
  return sharp({ create: { width, height, channels: 3, background: '#c02020' } }).composite([{ input: lower, top: half, left: 0 }]);
}

/** As a telephone stores it: lying on its side, with place and maker. */
async function fromTelephone(): Promise<Buffer> {
  const exif = { IFD0: { Make: 'Larkmoor', Copyright: 'nobody' }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 3230/100' } };
  return drawn(800, 600).withExif(exif).withMetadata({ orientation: 6 }).jpeg().toBuffer();
}

async function inspected(name: string, bytes: Buffer): Promise<Awaited<ReturnType<typeof inspectPhoto>>> {
  const path = join(temporaryFolder(), name);
  writeFileSync(path, bytes);
  return inspectPhoto(path);
}

async function reasonOf(name: string, bytes: Buffer): Promise<string> {
  const inspection = await inspected(name, bytes);
  return inspection.ok ? 'taken' : inspection.reason;
}

/** The head of a PNG that says to be of this size, and no pixels. */
function headOfPng(width: number, height: number): Buffer {
  const head = Buffer.alloc(33);
  head.write('\x89PNG\r\n\x1a\n', 0, 'latin1');
  head.writeUInt32BE(13, 8);
  head.write('IHDR', 12, 'latin1');
  head.writeUInt32BE(width, 16);
  head.writeUInt32BE(height, 20);
  head.set([8, 2, 0, 0, 0], 24);
  return head;
}

describe('an original', () => {
  test.each([
    ['a JPEG', 'a.jpg', () => drawn(60, 40).jpeg().toBuffer()],
    ['a PNG', 'a.png', () => drawn(60, 40).png().toBuffer()],
    ['a PNG that is called .jpg', 'a.jpg', () => drawn(60, 40).png().toBuffer()],
    ['a WebP', 'a.webp', () => drawn(60, 40).webp().toBuffer()],
    ['16 bits a channel', 'a.png', () => drawn(60, 40).toColourspace('rgb16').png().toBuffer()],
    ['grey', 'a.png', () => drawn(60, 40).greyscale().png().toBuffer()],
    ['CMYK', 'a.jpg', () => drawn(60, 40).toColourspace('cmyk').jpeg().toBuffer()],
    ['transparent', 'a.png', () => drawn(60, 40).ensureAlpha(0.5).png().toBuffer()],
  ])('%s is taken, and comes out in three channels of eight bits', async (_, name, make) => {
    const path = join(temporaryFolder(), name);
    writeFileSync(path, await make());
    expect(await inspectPhoto(path)).toMatchObject({ ok: true, width: 60, height: 40 });
    for (const { bytes } of await encodePhoto(path)) {
      expect(await sharp(bytes).metadata()).toMatchObject({ space: 'srgb', channels: 3, depth: 'uchar', width: 60, height: 40 });
    }
  });

  test('CMYK keeps its colour', async () => {
    const path = join(temporaryFolder(), 'a.jpg');
    writeFileSync(path, await drawn(60, 40).toColourspace('cmyk').jpeg({ quality: 95 }).toBuffer());
    const [picture] = await encodePhoto(path);
    const [red = 0, green = 0, blue = 0] = [
      ...(await sharp(picture?.bytes).extract({ left: 5, top: 5, width: 1, height: 1 }).raw().toBuffer()),
    ];
    expect([red > 120, green < 110, blue < 110]).toEqual([true, true, true]);
  });

  test.each([
    ['HEIC', 'a.heic', Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1'), /HEIC/],
    ['HEIC that is called .jpg', 'a.jpg', Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1'), /HEIC/],
    ['SVG', 'a.svg', Buffer.from('<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg"/>'), /SVG/],
    ['a GIF', 'a.gif', Buffer.from('GIF89a\x01\0\x01\0', 'latin1'), /GIF/],
    ['nothing', 'a.jpg', Buffer.alloc(0), /empty/],
    ['a text', 'a.jpg', Buffer.from('not a picture'), /no picture/],
    ['30000 × 30000 pixels', 'a.png', headOfPng(30000, 30000), /30000 × 30000|decoded/],
  ])('%s is refused in words', async (_, name, bytes, reason) => {
    expect(await reasonOf(name, bytes)).toMatch(reason);
  });

  test('a TIFF is refused with advice, in both byte orders: a camera raw file is one, and its preview is not the photo', async () => {
    const tiff = await drawn(60, 40).tiff().toBuffer();
    const raw = Buffer.from('MM\0*\0\0\0\x08\0\0\0\0\0\0', 'latin1');
    for (const [name, bytes] of [
      ['a.tif', tiff],
      ['a.jpg', tiff],
      ['b.raw', raw],
    ] as const)
      // prettier-ignore
      expect(await reasonOf(name, bytes)).toMatch(/TIFF.*camera raw.*export it as JPEG or PNG/);
    expect(await reasonOf('c.raw', Buffer.from('\0\0\0\x18ftypcrx \0\0\0\x01crx isom', 'latin1'))).toMatch(/camera raw/);
  });

  test('one that is cut short is refused', async () => {
    const whole = await drawn(900, 700).jpeg().toBuffer();
    expect(await reasonOf('a.jpg', whole.subarray(0, Math.floor(whole.length / 2)))).toMatch(/cannot be decoded/);
  });

  test('an animated one is refused', async () => {
    // Two frames that differ: alike ones are written as one.
    const frames = Buffer.concat([Buffer.alloc(20 * 20 * 3), Buffer.alloc(20 * 20 * 3, 200)]);
    const animated = await sharp(frames, { raw: { width: 20, height: 40, channels: 3, pageHeight: 20 } }).webp({ loop: 0, delay: [100, 100] }).toBuffer(); // prettier-ignore
    expect(await reasonOf('a.webp', animated)).toMatch(/animated/);
  });
});

describe('the pictures made of it', () => {
  test('stand upright, hold no metadata, and are never wider than it', async () => {
    const path = join(temporaryFolder(), 'a.jpg');
    const bytes = await fromTelephone();
    expect(metadataIn(bytes)).toContain('EXIF with a place (GPS)');
    writeFileSync(path, bytes);
    // Orientation 6: what was its left edge is its upper one.
    expect(await inspectPhoto(path)).toMatchObject({ ok: true, width: 600, height: 800 });
    const made = await encodePhoto(path);
    expect(made.map(({ format, width, height }) => `${format} ${String(width)} × ${String(height)}`)).toEqual([
      'webp 480 × 640',
      'webp 600 × 800',
      'jpeg 600 × 800',
    ]);
    for (const picture of made) {
      expect(metadataIn(picture.bytes)).toEqual([]);
      const { exif, icc, xmp, iptc, orientation } = await sharp(picture.bytes).metadata();
      expect([exif, icc, xmp, iptc, orientation]).toEqual([undefined, undefined, undefined, undefined, undefined]);
    }
    // Turned by a quarter: what was red above lies right, what was blue below lies left.
    const [left, right] = await Promise.all([50, 550].map((x) => sharp(made[1]?.bytes).extract({ left: x, top: 400, width: 1, height: 1 }).raw().toBuffer())); // prettier-ignore
    expect([(left?.[2] ?? 0) > 120, (right?.[0] ?? 0) > 120]).toEqual([true, true]);
  });

  test('have the same bytes from the same original', async () => {
    const path = join(temporaryFolder(), 'a.png');
    writeFileSync(path, await drawn(700, 500).png().toBuffer());
    const [one, other] = [await encodePhoto(path), await encodePhoto(path)];
    expect(one.map(({ bytes }) => bytes.toString('base64'))).toEqual(other.map(({ bytes }) => bytes.toString('base64')));
  });
});

describe('photos of an entry', () => {
  const PHOTOS = 'photos:\n  - { file: board.jpg, alt: The board from above }\n  - { file: bord.jpg, alt: The board from below }\n';

  async function withPhotos(): Promise<{ content: string; work: string }> {
    const content = contentFolder({ 'teardowns/a/index.md': entryText('A', 'x\n', PHOTOS) });
    writeFileSync(join(content, 'teardowns/a/board.jpg'), await fromTelephone());
    return { content, work: temporaryFolder() };
  }

  test('one that is not there is an error in its line, with the nearest name; check makes nothing of the others', async () => {
    const { content, work } = await withPhotos();
    const { diagnostics } = await prepare({ content, prepared: join(work, 'p'), cache: join(work, 'c'), mode: 'check' });
    const [missing, ...others] = diagnostics.filter(({ rule }) => rule.startsWith('photo-'));
    expect(others).toEqual([]);
    expect(missing).toMatchObject({ rule: 'photo-missing', severity: 'error', file: 'teardowns/a/index.md' });
    expect(missing?.message).toMatch(/"bord\.jpg".*"board\.jpg"/);
    const line = readFileSync(join(content, 'teardowns/a/index.md'), 'utf8').split('\n')[(missing?.line ?? 0) - 1];
    expect(line?.slice((missing?.column ?? 0) - 1)).toMatch(/^bord\.jpg/);
    const pictures = readdirSync(join(work, 'c'), { recursive: true, encoding: 'utf8' }).filter((name) => /\.(?:webp|jpg)$/.test(name));
    expect(pictures).toEqual([]);
  });

  test('one that is not there is looked for again in the next run, and what lies there by then is said', async () => {
    const { content, work } = await withPhotos();
    const said = async (): Promise<string | undefined> => {
      const { diagnostics } = await prepare({ content, prepared: join(work, 'p'), cache: join(work, 'c'), mode: 'check' });
      return diagnostics.find(({ rule }) => rule === 'photo-missing')?.message;
    };
    expect(await said()).toMatch(/it has "board\.jpg"\. Did/);
    writeFileSync(join(content, 'teardowns/a/BORD.JPG'), await fromTelephone());
    expect(await said()).toMatch(/spelt "BORD\.JPG", not "bord\.jpg"/);
  });

  test('are made once, kept, and made anew when the original changes', async () => {
    const content = contentFolder({ 'teardowns/a/index.md': entryText('A', 'x\n', PHOTOS.split('\n').slice(0, 2).join('\n') + '\n') });
    const original = join(content, 'teardowns/a/board.jpg');
    writeFileSync(original, await fromTelephone());
    const work = temporaryFolder();
    const made: number[] = [];
    const run = () =>
      prepare({ content, prepared: join(work, 'p'), cache: join(work, 'c'), mode: 'build', onPhoto: (done) => void made.push(done) });
    expect((await run()).counts.parsed).toBe(1);
    const first = readPhotoList(join(work, 'p')).pictures;
    expect(first.map(({ address }) => address)).toEqual([
      expect.stringMatching(/^\/photos\/a\/board-[0-9a-f]{8}-480\.webp$/),
      expect.stringMatching(/-600\.webp$/),
      expect.stringMatching(/-600\.jpg$/),
    ]);
    expect(first.every(({ file }) => existsSync(file))).toBe(true);
    expect([(await run()).counts.parsed, made.length]).toEqual([0, 1]);
    writeFileSync(original, await drawn(500, 400).jpeg().toBuffer());
    expect((await run()).counts.parsed).toBe(1);
    const second = readPhotoList(join(work, 'p')).pictures;
    expect(second[0]?.address).not.toBe(first[0]?.address);
    expect(first.some(({ file }) => existsSync(file))).toBe(false);
  });
});

describe('pictures of a finished site', () => {
  test('one with a place in it, an original and a huge one are faults by their names, whoever put them there', async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'deep'));
    const telephone = await fromTelephone();
    const clean = await drawn(60, 40).png().toBuffer();
    writeFileSync(join(folder, 'deep/from-public.jpg'), telephone);
    writeFileSync(join(folder, 'original.png'), clean);
    writeFileSync(join(folder, 'small.webp'), await drawn(60, 40).webp().toBuffer());
    writeFileSync(join(folder, 'huge.png'), Buffer.alloc(LARGEST_PICTURE + 1));
    // What it is called hides nothing; what names EXIF in its words is no picture.
    writeFileSync(join(folder, 'board'), telephone);
    writeFileSync(join(folder, 'board.bin'), clean);
    writeFileSync(join(folder, 'moving.JPG'), Buffer.concat([await drawn(60, 40).jpeg().toBuffer(), Buffer.from('ftypmp42')]));
    writeFileSync(join(folder, '_headers'), '/*\n  X-Words: Exif\0\0http://ns.adobe.com/xap/\n');
    const hash = createHash('sha256').update(clean).digest('hex');
    const faults = pictureFaults(folder, filesThatMayBePictures(folder), [hash]);
    expect(faults.map(({ page, message }) => `${page}: ${message}`)).toEqual([
      expect.stringMatching(/^board: .*place \(GPS\)/),
      expect.stringMatching(/^board\.bin: .*untouched original/),
      expect.stringMatching(/^deep\/from-public\.jpg: .*place \(GPS\)/),
      expect.stringMatching(/^huge\.png: .*2\.0 MB/),
      expect.stringMatching(/^moving\.JPG: .*data behind its end/),
      expect.stringMatching(/^original\.png: .*untouched original/),
    ]);
    expect(statSync(join(folder, 'small.webp')).size).toBeLessThan(LARGEST_PICTURE);
  });
});
