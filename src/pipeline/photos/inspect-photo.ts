import { readFileSync, statSync } from 'node:fs';
import sharp from 'sharp';
import { photoKind, type PhotoKind } from './photo-kind.ts';

/** Largest original, in bytes and in pixels: more is no help on a page, and a small file can unfold to gigabytes. */
const MOST_BYTES = 40 * 1024 * 1024;
const MOST_PIXELS = 60_000_000;

/** How every original is opened: nothing larger than the limit is unfolded, and what is cut short is refused. */
export const OPENING = { limitInputPixels: MOST_PIXELS, failOn: 'error' } as const;

/** A photo that can be published: its size when it stands upright. */
export type Inspection =
  | { readonly ok: true; readonly kind: PhotoKind; readonly width: number; readonly height: number }
  | { readonly ok: false; readonly reason: string };

/** Looks at a file: its kind, its size, and whether it can be decoded to its end. Never throws. */
export async function inspectPhoto(path: string): Promise<Inspection> {
  try {
    const { size } = statSync(path);
    if (size > MOST_BYTES)
      return refused(`it has ${(size / 1024 / 1024).toFixed(0)} MB; a photo has at most ${String(MOST_BYTES / 1024 / 1024)} MB`);
    const bytes = readFileSync(path);
    const sniffed = photoKind(bytes);
    if (!sniffed.ok) return sniffed;
    const { width, height, orientation = 1, pages = 1 } = await sharp(bytes, { ...OPENING, limitInputPixels: false }).metadata();
    if (width * height > MOST_PIXELS)
      return refused(`it has ${String(width)} × ${String(height)} pixels; a photo has at most ${String(MOST_PIXELS / 1e6)} million`);
    if (pages > 1) return refused(`it holds ${String(pages)} pictures; a photo is one`);
    // Small, but decoded to the last byte: a file that is cut short fails here.
    await sharp(bytes, OPENING).resize(32).raw().toBuffer();
    return orientation >= 5
      ? { ok: true, kind: sniffed.kind, width: height, height: width }
      : { ok: true, kind: sniffed.kind, width, height };
  } catch (error) {
    return refused(`it cannot be decoded (${firstLine(error)})`);
  }
}

function refused(reason: string): Inspection {
  return { ok: false, reason };
}

function firstLine(error: unknown): string {
  return (error instanceof Error ? error.message : String(error)).split('\n')[0]?.trim() ?? 'unknown';
}
