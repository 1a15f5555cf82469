import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { pageFacts } from '../../src/pipeline/built-site/page-facts.ts';
import { filesThatMayBePictures, pictureFaults } from '../../src/pipeline/photos/output-pictures.ts';
import { metadataIn } from '../../src/pipeline/photos/picture-metadata.ts';
import { temporaryFolder, writeFiles } from './content-folder.ts';

const WITHIN = 'a picture with EXIF with a place (GPS)';
const GPS = { IFD0: { Make: 'Larkmoor' }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 3230/100' } };
const plain = sharp({ create: { width: 24, height: 24, channels: 3, background: '#484' } });
// Written by libvips and libexif, which know nothing of how it is read here.
const [jpeg, jpegWithPlace, png, pngWithPlace, gif] = await Promise.all([
  plain.clone().jpeg().toBuffer(),
  plain.clone().withExif(GPS).jpeg().toBuffer(),
  plain.clone().png().toBuffer(),
  plain.clone().withExif(GPS).png().toBuffer(),
  plain.clone().gif().toBuffer(),
]);

/** An icon of these pictures. */
function icon(...pictures: readonly Buffer[]): Buffer {
  const head = Buffer.from([0, 0, 1, 0, pictures.length, 0]);
  let from = 6 + 16 * pictures.length;
  const entries = pictures.map((picture) => {
    const entry = Buffer.alloc(16);
    entry.writeUInt32LE(picture.length, 8);
    entry.writeUInt32LE(from, 12);
    from += picture.length;
    return entry;
  });
  return Buffer.concat([head, ...entries, ...pictures]);
}

function drawing(picture: Buffer, quote = '"'): Buffer {
  return Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg"><image href=${quote}data:image/jpeg;base64,${picture.toString('base64')}${quote}/></svg>`,
  );
}

function pdf(picture: Buffer, filter = '/Filter /DCTDecode', more = ''): Buffer {
  const head = `%PDF-1.7\n1 0 obj\n<< /Type /XObject /Subtype /Image ${filter} /Length ${String(picture.length)} >>\nstream\n`;
  return Buffer.concat([Buffer.from(head), picture, Buffer.from(`\nendstream\nendobj\ntrailer << ${more} >>\n%%EOF\n`)]);
}

/** A GIF with one more block before its first picture. */
function gifWith(...block: readonly (number | string)[]): Buffer {
  const at = 13 + 3 * 2 ** (((gif[10] ?? 0) & 7) + 1);
  const more = Buffer.concat(block.map((each) => (typeof each === 'number' ? Buffer.from([each]) : Buffer.from(each, 'latin1'))));
  return Buffer.concat([gif.subarray(0, at), more, gif.subarray(at)]);
}

describe('a GIF', () => {
  test('of pixels alone has nothing, looped neither', () => {
    expect(metadataIn(gif)).toEqual([]);
    expect(metadataIn(gifWith(0x21, 0xff, 11, 'NETSCAPE2.0', 3, '\x01\0\0', 0))).toEqual([]);
  });

  test('is told of by its comment, its XMP, and what stands behind its end', () => {
    expect(metadataIn(gifWith(0x21, 0xfe, 4, 'home', 0))).toEqual(['a comment']);
    expect(metadataIn(gifWith(0x21, 0xff, 11, 'XMP DataXMP', 3, 'abc', 0))).toEqual(['XMP']);
    expect(metadataIn(Buffer.concat([gif, jpeg]))).toEqual(['data behind its end']);
  });
});

describe('a picture that another file carries', () => {
  test.each([
    ['an icon', icon(png), icon(png, pngWithPlace)],
    ['a drawing', drawing(jpeg), drawing(jpegWithPlace)],
    ['a drawing in single quotes', drawing(jpeg, "'"), drawing(jpegWithPlace, "'")],
    ['a drawing in a drawing', drawing(drawing(jpeg)), drawing(drawing(jpegWithPlace))],
    ['a document', pdf(jpeg), pdf(jpegWithPlace)],
  ])('in %s is looked over as if it stood alone', (_, without, held) => {
    expect(metadataIn(without)).toEqual([]);
    expect(metadataIn(held).join()).toContain(WITHIN);
  });

  test('in a document under a second packing, or in an encrypted one, is refused since nobody can look', () => {
    expect(metadataIn(pdf(jpeg, '/Filter [/FlateDecode /DCTDecode]'))).toEqual([
      'a picture under a second packing, which cannot be looked over',
    ]);
    expect(metadataIn(pdf(jpeg, '/Filter [/DCTDecode]', '/Encrypt 9 0 R'))).toEqual(['encrypted content, which cannot be looked over']);
  });

  test('in a document under one more packing is unpacked and looked over, and so is a file attached to it', () => {
    const twice = '/Filter [/FlateDecode /DCTDecode]';
    expect(metadataIn(pdf(deflateSync(jpeg), twice))).toEqual([]);
    expect(metadataIn(pdf(deflateSync(jpegWithPlace), twice))).toEqual([WITHIN]);
    const attached = '/Type /EmbeddedFile /Filter /FlateDecode';
    expect(metadataIn(pdf(deflateSync(pngWithPlace), attached))).toEqual([WITHIN]);
    expect(metadataIn(pdf(Buffer.from('LZW'), '/Type /EmbeddedFile /Filter /LZWDecode'))).toEqual([
      'an attached file, which cannot be looked over',
    ]);
  });

  test('in a page, a style sheet or a script is found', () => {
    const folder = join(temporaryFolder(), 'out');
    const address = (picture: Buffer): string => `data:image/jpeg;base64,${picture.toString('base64')}`;
    writeFiles(folder, {
      'look.css': `.a { background: url(${address(jpegWithPlace)}) }`,
      'show.mjs': `export const picture = '${address(jpegWithPlace)}';`,
      'plain.css': `.a { background: url(${address(jpeg)}) }`,
    });
    const faults = pictureFaults(folder, filesThatMayBePictures(folder), []);
    expect(faults.map(({ page, message }) => `${page}: ${message.replace(/,.*/, '')}`)).toEqual([
      `look.css: The style sheet holds ${WITHIN}`,
      `show.mjs: The script holds ${WITHIN}`,
    ]);
    const page = (picture: Buffer): readonly string[] =>
      pageFacts(`<body>x<p style="background: url(${address(picture)})"></p></body>`).faults;
    expect(page(jpeg)).toEqual([]);
    expect(page(jpegWithPlace)).toEqual([expect.stringContaining(`The page holds ${WITHIN}`)]);
  });

  test('is found in whatever the site took over, under any name', () => {
    const folder = join(temporaryFolder(), 'out');
    writeFiles(folder, { 'favicon.ico': icon(pngWithPlace), 'logo.svg': drawing(jpegWithPlace), 'manual.pdf': pdf(jpegWithPlace), 'plain.svg': drawing(jpeg), 'anim.bin': gifWith(0x21, 0xfe, 4, 'home', 0) }); // prettier-ignore
    const faults = pictureFaults(folder, filesThatMayBePictures(folder), []);
    expect(faults.map(({ page, message }) => `${page}: ${message.replace(/,.*/, '')}`)).toEqual([
      'anim.bin: The picture holds a comment',
      `favicon.ico: The picture holds ${WITHIN}`,
      `logo.svg: The drawing holds ${WITHIN}`,
      `manual.pdf: The document holds ${WITHIN}`,
    ]);
  });
});
