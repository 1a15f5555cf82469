/** Metadata that a picture holds, in words; empty where it has none. Reads JPEG, PNG and WebP as far as their blocks go; never throws. */
export function metadataIn(bytes: Buffer): readonly string[] {
  const text = (from: number, to: number): string => bytes.toString('latin1', from, to);
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return inJpeg(bytes);
  if (text(1, 4) === 'PNG') return inPng(bytes);
  if (text(0, 4) === 'RIFF' && text(8, 12) === 'WEBP') return inWebp(bytes);
  // Other containers are not taken apart: what names EXIF or XMP is taken at its word.
  return bytes.includes('Exif') || bytes.includes('http://ns.adobe.com/xap/') ? ['metadata'] : [];
}

function inJpeg(bytes: Buffer): readonly string[] {
  const found = new Set<string>();
  for (let at = 2; at + 4 <= bytes.length && bytes[at] === 0xff;) {
    const marker = bytes[at + 1] ?? 0;
    // Start of the scan: only pixels follow.
    if (marker === 0xda || marker === 0xd9) break;
    const length = bytes.readUInt16BE(at + 2);
    const head = bytes.toString('latin1', at + 4, Math.min(at + 34, bytes.length));
    if (marker === 0xe1) found.add(head.startsWith('Exif') ? exifWords(bytes.subarray(at + 4, at + 2 + length)) : 'XMP');
    if (marker === 0xed) found.add('IPTC');
    if (marker === 0xfe) found.add('a comment');
    at += 2 + length;
  }
  return [...found];
}

/** The tag of the block of places is 0x8825. */
function exifWords(block: Buffer): string {
  return block.includes(Buffer.from([0x88, 0x25])) || block.includes(Buffer.from([0x25, 0x88])) ? 'EXIF with a place (GPS)' : 'EXIF';
}

function inPng(bytes: Buffer): readonly string[] {
  const found = new Set<string>();
  for (let at = 8; at + 8 <= bytes.length;) {
    const length = bytes.readUInt32BE(at);
    const type = bytes.toString('latin1', at + 4, at + 8);
    if (type === 'eXIf') found.add(exifWords(bytes.subarray(at + 8, at + 8 + length)));
    if (type === 'iTXt' || type === 'tEXt' || type === 'zTXt') found.add('text');
    if (type === 'IEND') break;
    at += 12 + length;
  }
  return [...found];
}

function inWebp(bytes: Buffer): readonly string[] {
  const found = new Set<string>();
  for (let at = 12; at + 8 <= bytes.length;) {
    const type = bytes.toString('latin1', at, at + 4);
    const length = bytes.readUInt32LE(at + 4);
    if (type === 'EXIF') found.add(exifWords(bytes.subarray(at + 8, at + 8 + length)));
    if (type === 'XMP ') found.add('XMP');
    at += 8 + length + (length % 2);
  }
  return [...found];
}
