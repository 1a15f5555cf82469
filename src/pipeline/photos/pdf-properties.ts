import { pdfStreams, unpackedStream } from './pdf-streams.ts';

/** Properties that name somebody: the author of ISO 32000-1, table 317, and what offices add. */
const NAMES = ['Author', 'Company', 'Manager'] as const;

/** A path of somebody's machine, as programs put it into titles. */
const MACHINE_PATH = /(?:[A-Za-z]:\\|\/home\/|\/Users\/)[^\s]/;

/**
 * What the properties of a PDF tell of who made it and where, in words: names in its document information and in its XMP, a place, a path of
 * a machine. The program that wrote it names nobody and stands in every PDF, so it is no fault. Never throws.
 */
export function pdfProperties(bytes: Buffer): readonly string[] {
  const parts = [bytes.toString('latin1'), ...packedParts(bytes)];
  const found = new Set<string>();
  for (const part of parts) {
    for (const name of NAMES) for (const value of valuesOf(part, name)) found.add(`${name.toLowerCase()} "${shortened(value)}"`);
    for (const value of valuesOf(part, 'Title')) if (MACHINE_PATH.test(value)) found.add('a path of the machine it was made on');
    for (const value of xmpCreators(part)) found.add(`author "${shortened(value)}"`);
    if (/exif:GPSL(?:at|ong)itude/.test(part)) found.add('a place (GPS)');
  }
  return [...found];
}

/** Objects and XMP that stand packed (sections 7.5.7 and 14.3.2). */
function packedParts(bytes: Buffer): readonly string[] {
  return pdfStreams(bytes)
    .filter(({ dictionary }) => /\/Type\s*\/(?:ObjStm|Metadata)\b|\/Subtype\s*\/XML\b/.test(dictionary))
    .flatMap((stream) => unpackedStream(stream)?.toString('latin1') ?? []);
}

function valuesOf(text: string, key: string): readonly string[] {
  const found = [
    ...text.matchAll(new RegExp(`/${key}\\s*(\\((?:\\\\[^]|[^\\\\()]|\\((?:\\\\[^]|[^\\\\()])*\\))*\\)|<[0-9A-Fa-f\\s]*>)`, 'g')),
  ];
  return found.map(([, written = '']) => stringOf(written).trim()).filter((value) => value !== '');
}

/** A string of a PDF as words: in brackets with escapes, or in hexadecimal; PDFDocEncoding is taken as Latin 1 (section 7.9.2). */
function stringOf(written: string): string {
  const inside = written.slice(1, -1);
  const bytes = written.startsWith('<') ? Buffer.from(inside.replace(/\s/g, ''), 'hex') : Buffer.from(withoutEscapes(inside), 'latin1');
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return bigEndian(bytes.subarray(2));
  return bytes[0] === 0xef && bytes[1] === 0xbb ? bytes.subarray(3).toString('utf8') : bytes.toString('latin1');
}

function bigEndian(bytes: Buffer): string {
  const swapped = Buffer.from(bytes.subarray(0, bytes.length - (bytes.length % 2)));
  return swapped.swap16().toString('utf16le');
}

const ESCAPED: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' };

function withoutEscapes(text: string): string {
  return text.replace(/\\(\r?\n|[0-7]{1,3}|[^])/g, (_, after: string) =>
    /^[0-7]/.test(after) ? String.fromCharCode(parseInt(after, 8) & 0xff) : after.endsWith('\n') ? '' : (ESCAPED[after] ?? after),
  );
}

/** Names under dc:creator; XMP is XML in UTF-8. */
function xmpCreators(text: string): readonly string[] {
  return [...text.matchAll(/<dc:creator>([^]*?)<\/dc:creator>/g)].flatMap(([, inside = '']) =>
    [...inside.matchAll(/<rdf:li[^>]*>([^<]+)</g)].map(([, name = '']) => Buffer.from(name, 'latin1').toString('utf8').trim()),
  );
}

function shortened(value: string): string {
  return value.length > 60 ? `${value.slice(0, 59)}…` : value;
}
