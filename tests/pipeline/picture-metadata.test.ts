import fc from 'fast-check';
import sharp, { type Sharp } from 'sharp';
import { describe, expect, test } from 'vitest';
import { jpegSegments } from '../../src/pipeline/photos/jpeg-segments.ts';
import { metadataIn } from '../../src/pipeline/photos/picture-metadata.ts';

const PLACE = 'EXIF with a place (GPS)';
const BEHIND = /^data behind its end/;

/** Noise, so that a scan holds many bytes of 0xFF. */
function noise(): Sharp {
  return sharp({ create: { width: 320, height: 240, channels: 3, background: '#888', noise: { type: 'gaussian', mean: 128, sigma: 60 } } });
}

type Encode = (picture: Sharp) => Sharp;

const KINDS: readonly (readonly [string, Encode])[] = [
  ['JPEG', (picture) => picture.jpeg()],
  ['progressive JPEG', (picture) => picture.jpeg({ progressive: true })],
  ['PNG', (picture) => picture.png()],
  ['WebP', (picture) => picture.webp()],
  ['lossless WebP', (picture) => picture.webp({ lossless: true })],
  ['AVIF', (picture) => picture.avif({ effort: 0 })],
];

// Written by libvips and libexif, which know nothing of how it is read here.
describe.each(KINDS)('%s, written by another program,', (_, encode) => {
  test('has no metadata where it was given none', async () => {
    expect(metadataIn(await encode(noise()).toBuffer())).toEqual([]);
  });

  test('has a place where it was given one, and a camera alone is none', async () => {
    const place = { IFD0: { Make: 'Larkmoor' }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 3230/100' } };
    expect(metadataIn(await encode(noise()).withExif(place).toBuffer())).toContain(PLACE);
    const camera = { IFD0: { Make: 'Larkmoor' }, IFD2: { FNumber: '28/10' } };
    expect(metadataIn(await encode(noise()).withExif(camera).toBuffer())).toEqual([expect.stringMatching(/^EXIF$/)]);
  });
});

/** A TIFF of one directory: each tag with a long of this value. */
function tiff(order: 'II' | 'MM', entries: readonly (readonly [tag: number, value: number])[]): Buffer {
  const bytes = Buffer.alloc(8 + 2 + 12 * entries.length + 4);
  const short = (value: number, at: number): number => (order === 'II' ? bytes.writeUInt16LE(value, at) : bytes.writeUInt16BE(value, at));
  const long = (value: number, at: number): number => (order === 'II' ? bytes.writeUInt32LE(value, at) : bytes.writeUInt32BE(value, at));
  bytes.write(order, 0, 'latin1');
  short(42, 2);
  long(8, 4);
  short(entries.length, 8);
  entries.forEach(([tag, value], index) => {
    const at = 10 + 12 * index;
    short(tag, at);
    short(4, at + 2);
    long(1, at + 4);
    long(value, at + 8);
  });
  return bytes;
}

/** A JPEG of these segments and nothing else. */
function jpegOf(...segments: readonly (readonly [marker: number, content: Buffer])[]): Buffer {
  const parts = segments.map(([marker, content]) => {
    const head = Buffer.from([0xff, marker, 0, 0]);
    head.writeUInt16BE(content.length + 2, 2);
    return Buffer.concat([head, content]);
  });
  return Buffer.concat([Buffer.from([0xff, 0xd8]), ...parts, Buffer.from([0xff, 0xd9])]);
}

function withExif(block: Buffer): Buffer {
  return jpegOf([0xe1, Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), block])]);
}

test('a TIFF has what its first directory leads to, and one of pixels alone has nothing', async () => {
  expect(metadataIn(await noise().tiff().toBuffer())).toEqual([]);
  expect(metadataIn(tiff('MM', [[0x0100, 320], [0x8769, 8]]))).toEqual(['EXIF']); // prettier-ignore
  expect(metadataIn(tiff('II', [[0x02bc, 8], [0x83bb, 8], [0x8825, 8]]))).toEqual([PLACE, 'XMP', 'IPTC']); // prettier-ignore
});

describe('a place', () => {
  test.each(['II', 'MM'] as const)(
    'is said where the tag is an entry of the first directory (%s), and not where its bytes only occur',
    (order) => {
      expect(metadataIn(withExif(tiff(order, [[0x0110, 1], [0x8825, 26]])))).toEqual([PLACE]); // prettier-ignore
      expect(metadataIn(withExif(tiff(order, [[0x0110, 0x88258825], [0x0112, 0x25882588]])))).toEqual(['EXIF']); // prettier-ignore
    },
  );

  test('is not said of a directory that lies outside the block or is cut short, and neither is passed over', () => {
    const whole = tiff('MM', [[0x0110, 1], [0x8825, 26]]); // prettier-ignore
    expect(metadataIn(withExif(whole.subarray(0, 30)))).toEqual(['EXIF']);
    const elsewhere = Buffer.from(whole);
    elsewhere.writeUInt32BE(0xfffffff0, 4);
    expect(metadataIn(withExif(elsewhere))).toEqual(['EXIF']);
    expect(metadataIn(withExif(Buffer.from('not a directory')))).toEqual(['EXIF']);
  });

  test('in a film is found by its box, or by the name of the standard that writes it', () => {
    const film = (more: string): Buffer => Buffer.from(`\0\0\0\x18ftypisom\0\0\0\0isommp42${more}`, 'latin1');
    expect(metadataIn(film('moov'))).toEqual([]);
    expect(metadataIn(film('\0\0\0\x1e\xa9xyz\0\x12\x15\xc7+51.5042-000.1300/'))).toEqual(['a place']);
    expect(metadataIn(film('mdta.location.ISO6709'))).toEqual(['a place']);
    expect(metadataIn(film('noise \xa9xyz noise'))).toEqual([]);
  });
});

describe('what stands behind the end of a picture', () => {
  const film = Buffer.from('\0\0\0\x18ftypmp42\0\0\0\0isommp42', 'latin1');

  test.each([
    ['JPEG', (picture: Sharp) => picture.jpeg()],
    ['progressive JPEG', (picture: Sharp) => picture.jpeg({ progressive: true })],
    ['PNG', (picture: Sharp) => picture.png()],
    ['WebP', (picture: Sharp) => picture.webp()],
  ])('%s: a film is found, filling is not', async (_, encode) => {
    const picture = await encode(noise()).toBuffer();
    expect(metadataIn(Buffer.concat([picture, film]))).toEqual([expect.stringMatching(BEHIND)]);
    expect(metadataIn(Buffer.concat([picture, Buffer.alloc(512)]))).toEqual([]);
  });

  test('a second JPEG behind the first is found, and the preview within the EXIF of one is no second', async () => {
    const [whole, preview] = [await noise().jpeg().toBuffer(), await noise().resize(32).jpeg().toBuffer()];
    expect(metadataIn(Buffer.concat([whole, preview]))).toEqual([expect.stringMatching(BEHIND)]);
    const block = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff('II', []), preview]);
    const segment = jpegOf([0xe1, block]).subarray(2, -2);
    expect(metadataIn(Buffer.concat([whole.subarray(0, 2), segment, whole.subarray(2)]))).toEqual(['EXIF']);
  });

  test('the end of a JPEG is that of its bytes, with markers of restart and filling before markers', async () => {
    const picture = await noise().jpeg().toBuffer();
    expect(jpegSegments(picture).end).toBe(picture.length);
    const restart = Buffer.from([0xff, 0xd8, 0xff, 0xff, 0xda, 0, 2, 1, 0xff, 0, 2, 0xff, 0xd0, 3, 0xff, 0xd9, 7]);
    expect(jpegSegments(restart).end).toBe(restart.length - 1);
    expect(jpegSegments(picture.subarray(0, -2)).end).toBeNull();
  });
});

test('whatever the bytes are, looking at them never throws', () => {
  const heads = [
    '\xff\xd8\xff\xe1',
    '\x89PNG\r\n\x1a\n',
    'RIFF\0\0\0\0WEBP',
    'II*\0',
    'MM\0*',
    'MM\0+',
    'GIF89a',
    '\0\0\x01\0\x02\0',
    '%PDF-1.7\n\xff\xd8\xff',
    '<svg href="data:image/png;base64,',
    '\0\0\0\x18ftypheic',
    '',
  ];
  const bytes = fc.tuple(fc.constantFrom(...heads), fc.uint8Array({ maxLength: 200 }));
  fc.assert(
    fc.property(bytes, ([head, rest]) => {
      expect(Array.isArray(metadataIn(Buffer.concat([Buffer.from(head, 'latin1'), rest])))).toBe(true);
    }),
    { seed: 20260314, numRuns: 2000 },
  );
});
