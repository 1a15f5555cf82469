/** One segment of a JPEG that carries a length; of its content without marker and length. */
export interface JpegSegment {
  readonly marker: number;
  readonly content: Buffer;
}

/** The segments of a JPEG in their order, and where it ends: null where no end comes (ITU-T T.81, annex B.1). Never throws. */
export function jpegSegments(bytes: Buffer): { readonly segments: readonly JpegSegment[]; readonly end: number | null } {
  const segments: JpegSegment[] = [];
  for (let at = 2; at + 2 <= bytes.length;) {
    if (bytes[at] !== 0xff) break;
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xd9) return { segments, end: at + 2 };
    // Any number of 0xFF may stand before a marker; those of restart and TEM have no length.
    if (marker === 0xff) at += 1;
    else if (hasNoLength(marker)) at += 2;
    else {
      if (at + 4 > bytes.length) break;
      const next = at + 2 + bytes.readUInt16BE(at + 2);
      segments.push({ marker, content: bytes.subarray(at + 4, next) });
      at = marker === 0xda ? endOfScan(bytes, next) : next;
    }
  }
  return { segments, end: null };
}

function hasNoLength(marker: number): boolean {
  return marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7);
}

/** Place of the next marker behind the pixels of a scan: 0xFF that is neither stuffed with a zero nor a restart. */
function endOfScan(bytes: Buffer, from: number): number {
  for (let at = bytes.indexOf(0xff, from); at !== -1; at = bytes.indexOf(0xff, at + 1)) {
    const marker = bytes[at + 1] ?? 0;
    if (marker !== 0 && marker !== 0xff && !hasNoLength(marker)) return at;
  }
  return bytes.length;
}
