import { inflateSync } from 'node:zlib';

/** One stream of a PDF: its dictionary as written, and its bytes, unpacked as far as `unpacked` says. */
export interface PdfStream {
  readonly dictionary: string;
  readonly content: Buffer;
}

/** Most bytes that one stream may unpack to: a small file can pack very much. */
const MOST = 64 * 1024 * 1024;

/**
 * Streams of a PDF in the order of the file (ISO 32000-1, section 7.3.8), whatever its table of objects says: one that an update took away
 * is in the file all the same. Never throws.
 */
export function pdfStreams(bytes: Buffer): readonly PdfStream[] {
  const text = bytes.toString('latin1');
  return [...text.matchAll(/(?<!end)stream\r?\n/g)].map((match) => {
    const head = text.slice(Math.max(0, text.lastIndexOf(' obj', match.index)), match.index);
    const from = match.index + match[0].length;
    const length = /\/Length\s+(\d+)(?!\s+\d+\s+R)/.exec(head)?.[1];
    const end = length === undefined ? text.indexOf('endstream', from) : from + Number(length);
    return { dictionary: head, content: bytes.subarray(from, end < 0 ? undefined : end) };
  });
}

/** Names of the filters that a stream is packed with, the outermost first, without those that only unpack it: "DCTDecode". */
export function pdfFilters(dictionary: string): readonly string[] {
  const written = /\/F(?:ilter)?\s*(\[[^\]]*\]|\/\w+)/.exec(dictionary)?.[1] ?? '';
  return [...written.matchAll(/\/(\w+)/g)].map(([, name = '']) => name);
}

/** A stream without its outermost packing, where that is the usual one (Flate, section 7.4.4); null where it is another or broken. */
export function unpackedStream({ dictionary, content }: PdfStream): Buffer | null {
  const [outermost] = pdfFilters(dictionary);
  if (outermost === undefined) return content;
  if (outermost !== 'FlateDecode' && outermost !== 'Fl') return null;
  try {
    return inflateSync(content, { maxOutputLength: MOST });
  } catch {
    // Not what it says it is, or larger than anybody would look over.
    return null;
  }
}
