import { isTiff } from './photo-kind.ts';

/**
 * How a picture or a film is packed. `boxes` are those of ISO 14496-12, in which HEIC, AVIF and JPEG XL stand; icons, documents (PDF) and
 * drawings (SVG) carry pictures of other kinds.
 */
export type PictureContainer = 'jpeg' | 'png' | 'webp' | 'gif' | 'tiff' | 'boxes' | 'film' | 'icon' | 'document' | 'drawing';

/** First bytes of a file that `pictureContainer` needs. */
export const HEAD = 64;

/** What a file is by its first bytes, whatever it is called; null for what is neither picture nor film. */
export function pictureContainer(head: Buffer): PictureContainer | null {
  const text = (from: number, to: number): string => head.toString('latin1', from, to);
  if (head[0] === 0xff && head[1] === 0xd8) return 'jpeg';
  if (text(0, 8) === '\x89PNG\r\n\x1a\n') return 'png';
  if (text(0, 4) === 'RIFF' && text(8, 12) === 'WEBP') return 'webp';
  if (text(0, 4) === 'GIF8') return 'gif';
  if (isTiff(head)) return 'tiff';
  if (/^\0\0[\x01\x02]\0/.test(text(0, 4))) return 'icon';
  if (text(0, 5) === '%PDF-') return 'document';
  if (/^(?:\xef\xbb\xbf)?\s*<(?:\?xml|svg|!doctype svg|!--)/i.test(text(0, HEAD))) return 'drawing';
  if (text(4, 8) === 'JXL ') return 'boxes';
  if (text(4, 8) === 'ftyp') return /hei[cfxms]|mif1|msf1|hev[cx]|avi[fs]/.test(text(8, 32)) ? 'boxes' : 'film';
  return null;
}
