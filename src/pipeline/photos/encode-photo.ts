import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import type { PhotoSource } from '../../corpus/published-photo.ts';
import { OPENING } from './inspect-photo.ts';
import { PHOTO_KINDS } from './photo-kind.ts';

/** One encoded picture. */
export interface EncodedPhoto {
  readonly format: PhotoSource['format'];
  readonly width: number;
  readonly height: number;
  readonly bytes: Buffer;
}

/**
 * Widths that pages use: a phone, a desktop, and both with twice the pixels. WebP for those; JPEG, a quarter larger, once for browsers
 * without it. AVIF at effort 3 took five times the time for a tenth fewer bytes on drawn boards, so it is not made.
 */
export const WEBP_WIDTHS = [480, 960, 1780] as const;
export const JPEG_WIDTHS = [960] as const;

/** Changes whenever the bytes of the outputs may, and whenever other originals are taken. */
export const ENCODING = JSON.stringify({
  kinds: PHOTO_KINDS,
  WEBP_WIDTHS,
  JPEG_WIDTHS,
  webp: 78,
  jpeg: 80,
  sharp: sharp.versions.sharp,
  vips: sharp.versions.vips,
});

/**
 * The pictures of one original: turned upright, in sRGB with eight bits, on white where it was transparent, no wider than it was, and
 * without any metadata. The same original gives the same bytes. Throws where it cannot be decoded.
 */
export async function encodePhoto(path: string): Promise<readonly EncodedPhoto[]> {
  const widest = WEBP_WIDTHS[WEBP_WIDTHS.length - 1] ?? 1780;
  // Decoded once: the smaller ones are made from the widest, whose pixels stay in memory.
  const { data, info } = await sharp(readFileSync(path), OPENING)
    .autoOrient()
    .resize({ width: widest, withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb')
    .raw()
    .toBuffer({ resolveWithObject: true });
  const raw = { raw: { width: info.width, height: info.height, channels: info.channels } };
  const made = (widths: readonly number[]): readonly number[] => [...new Set(widths.map((width) => Math.min(width, info.width)))];
  const wanted = [
    ...made(WEBP_WIDTHS).map((width) => ({ format: 'webp', width }) as const),
    ...made(JPEG_WIDTHS).map((width) => ({ format: 'jpeg', width }) as const),
  ];
  const encoded: EncodedPhoto[] = [];
  for (const { format, width } of wanted) {
    const sized = sharp(data, raw).resize({ width });
    const picture = format === 'webp' ? sized.webp({ quality: 78, effort: 3 }) : sized.jpeg({ quality: 80, progressive: true });
    const output = await picture.toBuffer({ resolveWithObject: true });
    encoded.push({ format, width: output.info.width, height: output.info.height, bytes: output.data });
  }
  return encoded;
}
