import { jpegSegments } from './jpeg-segments.ts';
import { pdfFilters, pdfStreams, unpackedStream } from './pdf-streams.ts';

const HIDDEN_PICTURE = 'a picture under a second packing, which cannot be looked over';

/** Pictures that another file carries, and what cannot be looked into, in words. */
export interface PicturesInside {
  readonly pictures: readonly Buffer[];
  readonly hidden: readonly string[];
}

/** Pictures of an icon file: each entry of its directory says how long its picture is and where it stands. Never throws. */
export function picturesInIcon(bytes: Buffer): PicturesInside {
  const pictures: Buffer[] = [];
  const entries = bytes.length < 6 ? 0 : bytes.readUInt16LE(4);
  for (let at = 6; at + 16 <= bytes.length && at < 6 + 16 * entries; at += 16) {
    const from = bytes.readUInt32LE(at + 12);
    pictures.push(bytes.subarray(from, from + bytes.readUInt32LE(at + 8)));
  }
  return { pictures, hidden: [] };
}

/** Pictures in data: addresses of a drawing, a page or a style sheet (RFC 2397), packed drawings among them. Never throws. */
export function picturesInText(text: string): PicturesInside {
  const plain = text.replaceAll('&#x2F;', '/').replaceAll('&#43;', '+');
  const pictures = [...plain.matchAll(/data:[a-z]+\/[a-z0-9.+-]+((?:;[^,;"')]*)*),([^"')<>]*)/gi)].map(([, parameters = '', data = '']) =>
    /;\s*base64/i.test(parameters) ? Buffer.from(unescaped(data), 'base64') : Buffer.from(unescaped(data), 'latin1'),
  );
  return { pictures, hidden: [] };
}

function unescaped(data: string): string {
  return data
    .replace(/&#(?:10|13|x0?[ad]);/gi, '')
    .replace(/%([0-9a-f]{2})/gi, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
}

/**
 * Pictures of a PDF that stand in it as JPEG files (ISO 32000-1, section 7.4.8, DCTDecode), under one more packing too, and files that are
 * attached to it. What is packed otherwise, and all of an encrypted document, cannot be seen, which is said. Never throws.
 */
export function picturesInPdf(bytes: Buffer): PicturesInside {
  const pictures: Buffer[] = [];
  for (let at = bytes.indexOf('\xff\xd8\xff', 0, 'latin1'); at !== -1;) {
    const rest = bytes.subarray(at);
    const { end } = jpegSegments(rest);
    pictures.push(rest.subarray(0, end ?? undefined));
    at = bytes.indexOf('\xff\xd8\xff', at + (end ?? 3), 'latin1');
  }
  const hidden = new Set<string>();
  for (const stream of pdfStreams(bytes)) {
    const [, second = ''] = pdfFilters(stream.dictionary);
    const isAttached = /\/Type\s*\/EmbeddedFile\b/.test(stream.dictionary);
    if (!isAttached && !/^(?:DCT|JPX)/.test(second)) continue;
    const content = unpackedStream(stream);
    if (content !== null) pictures.push(content);
    else hidden.add(isAttached ? 'an attached file, which cannot be looked over' : HIDDEN_PICTURE);
  }
  if (/\/Encrypt\s+\d+\s+\d+\s+R/.test(bytes.toString('latin1'))) hidden.add('encrypted content, which cannot be looked over');
  return { pictures, hidden: [...hidden] };
}
