/** Tags that lead to a block of their own: places, camera data, XMP, IPTC (Exif 2.32, section 4.6.3; TIFF revision 6.0, section 8). */
export const TIFF_TAGS = { places: 0x8825, camera: 0x8769, xmp: 0x02bc, iptc: 0x83bb } as const;

/**
 * Tags of the first directory of a TIFF, which is what a block of EXIF is (TIFF revision 6.0, section 2). Both byte orders; as many
 * entries as there are bytes for; none where it is no TIFF. Never throws.
 */
export function tiffTags(bytes: Buffer): ReadonlySet<number> {
  const order = bytes.toString('latin1', 0, 4);
  if (order !== 'II*\0' && order !== 'MM\0*') return new Set();
  const little = order === 'II*\0';
  const short = (at: number): number => (little ? bytes.readUInt16LE(at) : bytes.readUInt16BE(at));
  if (bytes.length < 8) return new Set();
  const directory = little ? bytes.readUInt32LE(4) : bytes.readUInt32BE(4);
  if (directory + 2 > bytes.length) return new Set();
  const tags = new Set<number>();
  for (let entry = 0; entry < short(directory); entry += 1) {
    const at = directory + 2 + 12 * entry;
    if (at + 12 > bytes.length) break;
    tags.add(short(at));
  }
  return tags;
}
