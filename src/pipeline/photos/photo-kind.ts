/** Kinds that are taken. */
export const PHOTO_KINDS = ['jpeg', 'png', 'webp'] as const;

/** What a file is by its first bytes, whatever it is called. */
export type PhotoKind = (typeof PHOTO_KINDS)[number];

/** A kind that is taken, or words for one that is not. */
export type Sniffed = { readonly ok: true; readonly kind: PhotoKind } | { readonly ok: false; readonly reason: string };

/** Tells a file's kind from its content. */
export function photoKind(bytes: Buffer): Sniffed {
  const text = (from: number, to: number): string => bytes.toString('latin1', from, to);
  if (bytes.length === 0) return refused('it is empty');
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return { ok: true, kind: 'jpeg' };
  if (text(0, 8) === '\x89PNG\r\n\x1a\n') return isAnimatedPng(bytes) ? refused('it is animated') : { ok: true, kind: 'png' };
  if (text(0, 4) === 'RIFF' && text(8, 12) === 'WEBP')
    return isAnimatedWebp(bytes) ? refused('it is animated') : { ok: true, kind: 'webp' };
  if (isTiff(bytes))
    return refused(
      'it is a TIFF, the container of camera raw files too, of which only the small preview would be shown; export it as JPEG or PNG',
    );
  if (text(0, 3) === 'GIF') return refused('it is a GIF, which holds 256 colours; export it as JPEG or PNG');
  if (text(4, 8) === 'ftyp') return refused(isoReason(text(8, 24)));
  if (/^\s*(?:<\?xml|<svg|<!DOCTYPE svg)/i.test(text(0, 256)))
    return refused('it is an SVG drawing, which can hold scripts; export it as PNG');
  return refused('it is no picture that is known here; JPEG, PNG and WebP are');
}

function refused(reason: string): Sniffed {
  return { ok: false, reason };
}

/** Pictures in the container of ISO 14496-12 are named by their brand. */
function isoReason(brands: string): string {
  if (/hei[cfxms]|mif1|msf1|hev[cx]/.test(brands)) return 'it is HEIC, as telephones store photos; export it as JPEG';
  if (brands.startsWith('crx ')) return 'it is a camera raw file; export it as JPEG or PNG';
  return /avi[fs]/.test(brands) ? 'it is AVIF; export it as JPEG or PNG' : 'it is a film or an unknown container';
}

/** The head of a TIFF, in both byte orders, with places of 32 bits (42) and of 64 (43); TIFF revision 6.0, section 2. */
export function isTiff(bytes: Buffer): boolean {
  return ['II*\0', 'MM\0*', 'II+\0', 'MM\0+'].includes(bytes.toString('latin1', 0, 4));
}

function isAnimatedPng(bytes: Buffer): boolean {
  const control = bytes.indexOf('acTL', 8, 'latin1');
  const image = bytes.indexOf('IDAT', 8, 'latin1');
  return control !== -1 && (image === -1 || control < image);
}

function isAnimatedWebp(bytes: Buffer): boolean {
  // Bit 1 of the flags of the extended header (VP8X).
  return bytes.toString('latin1', 12, 16) === 'VP8X' && ((bytes[20] ?? 0) & 0x02) !== 0;
}
