import { jpegSegments } from './jpeg-segments.ts';
import { metadataInGif } from './gif-metadata.ts';
import { HEAD, pictureContainer } from './picture-container.ts';
import { pdfProperties } from './pdf-properties.ts';
import { picturesInIcon, picturesInPdf, picturesInText, type PicturesInside } from './pictures-inside.ts';
import { TIFF_TAGS, tiffTags } from './tiff-directory.ts';

/**
 * Metadata that a picture or a film holds, in words; empty where it has none, or is something else. Reads JPEG, PNG and WebP block by
 * block, GIF too, and looks behind their ends, where telephones put the film of a moving photo; what icons, drawings and documents carry is
 * looked over as if it stood alone. Never throws.
 *
 * @param depth how many files the bytes were carried in
 */
export function metadataIn(bytes: Buffer, depth = 0): readonly string[] {
  switch (pictureContainer(bytes.subarray(0, HEAD))) {
    case 'jpeg':
      return inJpeg(bytes);
    case 'png':
      return inPng(bytes);
    case 'webp':
      return inWebp(bytes);
    case 'tiff':
      return inTiff(bytes);
    case 'gif':
      return metadataInGif(bytes);
    case 'icon':
      return carried(picturesInIcon(bytes), depth);
    case 'drawing':
      return carried(picturesInText(bytes.toString('latin1')), depth);
    case 'document':
      return [...pdfProperties(bytes), ...carried(picturesInPdf(bytes), depth)];
    case 'boxes':
    case 'film':
      return byMarks(bytes);
    case null:
      return [];
  }
}

/** Metadata of the pictures that the text of a page, a style sheet or a script carries. Never throws. */
export function metadataInText(text: string): readonly string[] {
  return text.includes('data:') ? carried(picturesInText(text), 0) : [];
}

/** Pictures in pictures in pictures are not followed for ever. */
const DEEPEST = 4;

/** What the pictures hold that another file carries. */
function carried({ pictures, hidden }: PicturesInside, depth: number): readonly string[] {
  if (depth >= DEEPEST) return ['pictures in pictures, too deep to look over'];
  const held = new Set(pictures.flatMap((picture) => metadataIn(picture, depth + 1)));
  return [...[...held].map((words) => `a picture with ${words}`), ...hidden];
}

const EXIF_WITH_PLACE = 'EXIF with a place (GPS)';

const BEHIND = 'data behind its end (as the film of a moving photo)';

/** Zeros behind the end only fill a block. */
function isFilled(rest: Buffer): boolean {
  return rest.some((byte) => byte !== 0);
}

function inJpeg(bytes: Buffer): readonly string[] {
  const found = new Set<string>();
  const { segments, end } = jpegSegments(bytes);
  for (const { marker, content } of segments) {
    if (marker === 0xe1) found.add(content.toString('latin1', 0, 4) === 'Exif' ? exifWords(content) : 'XMP');
    if (marker === 0xed) found.add('IPTC');
    if (marker === 0xfe) found.add('a comment');
  }
  if (end !== null && isFilled(bytes.subarray(end))) found.add(BEHIND);
  return [...found];
}

const EXIF_HEAD = 'Exif\0\0';

/** A block of EXIF, with or without its head. */
function exifWords(block: Buffer): string {
  const tiff = block.toString('latin1', 0, EXIF_HEAD.length) === EXIF_HEAD ? block.subarray(EXIF_HEAD.length) : block;
  return tiffTags(tiff).has(TIFF_TAGS.places) ? EXIF_WITH_PLACE : 'EXIF';
}

function inPng(bytes: Buffer): readonly string[] {
  const found = new Set<string>();
  for (let at = 8; at + 8 <= bytes.length;) {
    const length = bytes.readUInt32BE(at);
    const type = bytes.toString('latin1', at + 4, at + 8);
    if (type === 'eXIf') found.add(exifWords(bytes.subarray(at + 8, at + 8 + length)));
    if (type === 'iTXt' || type === 'tEXt' || type === 'zTXt') found.add('text');
    at += 12 + length;
    if (type !== 'IEND') continue;
    if (isFilled(bytes.subarray(at))) found.add(BEHIND);
    break;
  }
  return [...found];
}

function inWebp(bytes: Buffer): readonly string[] {
  const found = new Set<string>();
  const end = 8 + bytes.readUInt32LE(4);
  for (let at = 12; at + 8 <= Math.min(end, bytes.length);) {
    const type = bytes.toString('latin1', at, at + 4);
    const length = bytes.readUInt32LE(at + 4);
    if (type === 'EXIF') found.add(exifWords(bytes.subarray(at + 8, at + 8 + length)));
    if (type === 'XMP ') found.add('XMP');
    at += 8 + length + (length % 2);
  }
  if (isFilled(bytes.subarray(end + (end % 2)))) found.add(BEHIND);
  return [...found];
}

function inTiff(bytes: Buffer): readonly string[] {
  const tags = tiffTags(bytes);
  const place = tags.has(TIFF_TAGS.places) ? [EXIF_WITH_PLACE] : tags.has(TIFF_TAGS.camera) ? ['EXIF'] : [];
  return [...place, ...(tags.has(TIFF_TAGS.xmp) ? ['XMP'] : []), ...(tags.has(TIFF_TAGS.iptc) ? ['IPTC'] : [])];
}

/** Other containers are not taken apart: what names EXIF, XMP or a place after ISO 6709 is taken at its word. */
function byMarks(bytes: Buffer): readonly string[] {
  const exif = !bytes.includes('Exif\0', 0, 'latin1') ? [] : [hasPlaceSomewhere(bytes) ? EXIF_WITH_PLACE : 'EXIF'];
  const xmp = bytes.includes('http://ns.adobe.com/xap/') ? ['XMP'] : [];
  return [...exif, ...xmp, ...(bytes.includes('location.ISO6709') || hasWrittenPlace(bytes) ? ['a place'] : [])];
}

/** The block of EXIF stands in a box of its own, away from the word that announces it. */
function hasPlaceSomewhere(bytes: Buffer): boolean {
  return ['II*\0', 'MM\0*'].some((head) => {
    for (let at = bytes.indexOf(head, 0, 'latin1'); at !== -1; at = bytes.indexOf(head, at + 4, 'latin1'))
      if (tiffTags(bytes.subarray(at)).has(TIFF_TAGS.places)) return true;
    return false;
  });
}

/** A film's box of a place: its length and language, four bytes, and then degrees with their sign. */
function hasWrittenPlace(bytes: Buffer): boolean {
  for (let at = bytes.indexOf('\xa9xyz', 0, 'latin1'); at !== -1; at = bytes.indexOf('\xa9xyz', at + 4, 'latin1')) {
    if (/^[+-]\d/.test(bytes.toString('latin1', at + 8, at + 10))) return true;
  }
  return false;
}
