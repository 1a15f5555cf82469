import type { PhotoSource, PublishedPhoto } from '../corpus/published-photo.ts';
import { escapeText } from '../figures/markup.ts';

/** How wide a picture stands on the page, as `sizes` says it: over the matter's columns on a sheet, over the whole width on a phone. */
const MATTER_COLUMNS = '(max-width: 839px) calc(100vw - 32px), (max-width: 1279px) 72vw, 890px';

/** How a picture stands on its page. */
export interface PicturePlace {
  /** What can be seen, for those who do not see it. */
  readonly alt: string;
  /** Width on the page in the words of the `sizes` attribute; that of the matter's columns where left out. */
  readonly sizes?: string;
  /** Seen without scrolling, so that it is fetched at once; a picture is else fetched when the reader comes near it. */
  readonly atOnce?: true;
}

/** The picture in the sizes that were made of it; width and height are given, so that nothing jumps when it comes. Empty without sources. */
export function photoPicture(photo: PublishedPhoto, { alt, sizes = MATTER_COLUMNS, atOnce }: PicturePlace): string {
  const fallback = sourcesOf(photo, 'jpeg');
  const shown = largestPhoto(photo);
  const inside = fallback.at(-1) ?? shown;
  if (inside === null) return '';
  const better = sourcesOf(photo, 'webp');
  const set = (sources: readonly PhotoSource[]): string =>
    ` srcset="${sources.map(({ address, width }) => `${escapeText(address)} ${width}w`).join(', ')}" sizes="${escapeText(sizes)}"`;
  return (
    `<picture>${better.length === 0 ? '' : `<source type="image/webp"${set(better)}>`}` +
    `<img src="${escapeText(inside.address)}"${fallback.length === 0 ? '' : set(fallback)} width="${photo.width}" height="${photo.height}" ` +
    `alt="${escapeText(alt)}"${atOnce === true ? '' : ' loading="lazy"'} decoding="async"></picture>`
  );
}

/** The widest file of a photo, for a link to the picture in full; null where there is none. */
export function largestPhoto({ sources }: PublishedPhoto): PhotoSource | null {
  return sources.reduce<PhotoSource | null>((widest, source) => (widest === null || source.width > widest.width ? source : widest), null);
}

function sourcesOf({ sources }: PublishedPhoto, format: PhotoSource['format']): readonly PhotoSource[] {
  return sources.filter((source) => source.format === format);
}
