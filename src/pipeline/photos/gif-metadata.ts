/** Lengths of a GIF's head and of an image's description (GIF89a specification, sections 17, 18 and 20). */
const HEAD = 13;
const DESCRIPTION = 10;

/** Comments and application data of a GIF, in words; what loops a film or tells its colours is neither. Never throws. */
export function metadataInGif(bytes: Buffer): readonly string[] {
  const found = new Set<string>();
  let at = HEAD + colourBytes(bytes[10] ?? 0);
  while (at < bytes.length) {
    const kind = bytes[at];
    if (kind === 0x3b) {
      if (bytes.subarray(at + 1).some((byte) => byte !== 0)) found.add('data behind its end');
      break;
    }
    if (kind === 0x2c) at = endOfBlocks(bytes, at + DESCRIPTION + colourBytes(bytes[at + 9] ?? 0) + 1);
    else if (kind === 0x21) {
      const label = bytes[at + 1];
      if (label === 0xfe) found.add('a comment');
      if (label === 0xff) {
        const application = bytes.toString('latin1', at + 3, at + 14);
        if (application.startsWith('XMP Data')) found.add('XMP');
        else if (!/^(?:NETSCAPE2\.0|ANIMEXTS1\.0|ICCRGBG1012)$/.test(application)) found.add('application data');
      }
      at = endOfBlocks(bytes, at + 2);
    } else {
      // What is no block is not read past: a reader of pictures would not either.
      found.add('bytes that belong to no block');
      break;
    }
  }
  return [...found];
}

function colourBytes(flags: number): number {
  return (flags & 0x80) === 0 ? 0 : 3 * 2 ** ((flags & 0x07) + 1);
}

/** Behind the empty block that ends a row of blocks. */
function endOfBlocks(bytes: Buffer, from: number): number {
  let at = from;
  while (at < bytes.length && (bytes[at] ?? 0) !== 0) at += 1 + (bytes[at] ?? 0);
  return at + 1;
}
