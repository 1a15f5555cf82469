import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { filesThatMayBePictures, pictureFaults } from '../../src/pipeline/photos/output-pictures.ts';
import { metadataIn } from '../../src/pipeline/photos/picture-metadata.ts';
import { temporaryFolder, writeFiles } from './content-folder.ts';

/** A document with this information dictionary (ISO 32000-1, section 14.3.3), written plainly. */
function withInformation(entries: string): Buffer {
  return Buffer.from(`%PDF-1.7\n1 0 obj\n<< ${entries} >>\nendobj\ntrailer << /Info 1 0 R >>\n%%EOF\n`, 'latin1');
}

/** A document with one stream of this dictionary. */
function withStream(dictionary: string, content: Buffer): Buffer {
  const head = `%PDF-1.7\n2 0 obj\n<< ${dictionary} /Length ${String(content.length)} >>\nstream\n`;
  return Buffer.concat([Buffer.from(head), content, Buffer.from('\nendstream\nendobj\n%%EOF\n')]);
}

const XMP = (inside: string): Buffer =>
  Buffer.from(
    `<x:xmpmeta><rdf:RDF><rdf:Description><dc:creator><rdf:Seq><rdf:li>Ines Büchner</rdf:li></rdf:Seq></dc:creator>${inside}</rdf:Description></rdf:RDF></x:xmpmeta>`,
  );

describe('the properties of a document', () => {
  test('that name the program and the time alone are those of every document', () => {
    expect(
      metadataIn(withInformation('/Producer (a library 1.2) /Creator (a program) /CreationDate (D:20260101) /Title (Manual)')),
    ).toEqual([]);
    expect(metadataIn(withInformation('/Author () /Company <>'))).toEqual([]);
  });

  test.each([
    ['in brackets', '/Author (I. Larkmoor)', 'author "I. Larkmoor"'],
    ['with escapes', '/Author (I. \\(Ines\\) B\\374chner)', 'author "I. (Ines) Büchner"'],
    ['with brackets in brackets', '/Author (I. (Ines) Larkmoor)', 'author "I. (Ines) Larkmoor"'],
    ['in hexadecimal of two bytes', '/Author <FEFF0049006E00650073>', 'author "Ines"'],
    ['of an office', '/Company (Larkmoor Repairs)', 'company "Larkmoor Repairs"'],
    ['that is a path', '/Title (C:\\\\Users\\\\ines\\\\manual.doc)', 'a path of the machine it was made on'],
  ])('are told of: a name %s', (_, entries, words) => {
    expect(metadataIn(withInformation(entries))).toEqual([words]);
  });

  test('are found in packed objects and in XMP, plain and packed', () => {
    const objects = deflateSync(Buffer.from('1 0 << /Author (I. Larkmoor) /Producer (a library) >>'));
    expect(metadataIn(withStream('/Type /ObjStm /N 1 /First 4 /Filter /FlateDecode', objects))).toEqual(['author "I. Larkmoor"']);
    expect(metadataIn(withStream('/Type /Metadata /Subtype /XML', XMP('')))).toEqual(['author "Ines Büchner"']);
    const place = XMP('<exif:GPSLatitude>51,30.5N</exif:GPSLatitude>');
    expect(metadataIn(withStream('/Type /Metadata /Subtype /XML /Filter /FlateDecode', deflateSync(place)))).toEqual([
      'author "Ines Büchner"',
      'a place (GPS)',
    ]);
  });

  test('that are broken off, or packed so that they would fill the memory, end nothing', () => {
    const whole = withStream('/Type /ObjStm /Filter /FlateDecode', deflateSync(Buffer.alloc(80 * 1024 * 1024)));
    expect(metadataIn(whole)).toEqual([]);
    for (let length = 5; length < 160; length += 7) expect(() => metadataIn(whole.subarray(0, length))).not.toThrow();
  });

  test('are a finding at the file', () => {
    const folder = join(temporaryFolder(), 'out');
    writeFiles(folder, { 'manuals/fuse.pdf': withInformation('/Author (I. Larkmoor)') });
    expect(pictureFaults(folder, filesThatMayBePictures(folder), [])).toEqual([
      {
        page: 'manuals/fuse.pdf',
        message: 'The document holds author "I. Larkmoor", which can tell where and by whom it was made; store it without',
      },
    ]);
  });
});
