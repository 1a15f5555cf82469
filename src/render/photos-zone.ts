import type { PreparedSheet } from '../corpus/prepared.ts';
import type { PublishedPhoto } from '../corpus/published-photo.ts';
import type { Photo } from '../entry/entry.ts';
import { escapeText } from '../figures/markup.ts';
import type { CalloutItem } from '../figures/photo-frame/callout-item.ts';
import { frameSize, type FrameSize, type PictureSize } from '../figures/photo-frame/frame-size.ts';
import type { DrawnLength } from '../figures/photo-frame/length-label.ts';
import { photoAround } from '../figures/photo-frame/photo-around.ts';
import { photoNear } from '../figures/photo-frame/photo-near.ts';
import { dimensionArrows, photoOver } from '../figures/photo-frame/photo-over.ts';
import { photoLengths, type PhotoLength } from '../derived/photo-lengths/photo-lengths.ts';
import { photoAnchor, photoItems } from './photo-items.ts';
import { photoLengthsView, shownLength } from './photo-lengths-view.ts';
import { largestPhoto, photoPicture } from './photo-picture.ts';
import type { SheetZone } from './sheet-zone.ts';
import { countWord, sentence } from './words.ts';
import { counted } from '../units/counted.ts';
import { sentenceCase } from '../units/sentence-case.ts';

/** Where the size of a photo is not known, its frame is drawn in this ratio. */
const WITHOUT_PICTURE: PictureSize = { width: 4, height: 3 };

/** Room that a photo takes on the page, in the words of the `sizes` attribute. */
const SIZES: Readonly<Record<FrameSize['kind'], string>> = {
  wide: '(max-width: 839px) calc(100vw - 56px), (max-width: 1279px) 80vw, 1006px',
  upright: '(max-width: 839px) calc(100vw - 56px), 640px',
};

/** Every photo in its frame, with its callouts and what was measured in it; null where the entry has none. */
export function photosZone({ entry, photos }: PreparedSheet): SheetZone | null {
  if (entry.photos.length === 0) return null;
  const lengths = photoLengths(entry, photos);
  const views = entry.photos.map((photo, index) =>
    photoView({
      photo,
      index,
      published: photos[index] ?? null,
      items: photoItems(entry, index),
      lengths: lengths.filter((each) => each.photo === index + 1),
    }),
  );
  const hasLengths = entry.photos.some(({ scale }) => scale !== null);
  const title = entry.photos.length === 1 ? 'Photo' : 'Photos';
  return {
    title,
    layout: 'full',
    side: leadOf(entry.photos),
    matter: `${hasLengths ? dimensionArrows() : ''}${views.join('')}${photoLengthsView(lengths)}`,
  };
}

function leadOf(photos: readonly Photo[]): string {
  const callouts = photos.reduce((sum, photo) => sum + photo.callouts.length, 0);
  const many = `${sentenceCase(countWord(photos.length))} ${photos.length === 1 ? 'photo' : 'photos'}`;
  const numbers =
    callouts === 0 ? '' : ` with ${counted(callouts, 'numbered mark')}. Each number is the item number in the part table, and leads there`;
  return `${many}${numbers}. Places are written as photo and zone: photo 1, B4 is row B, column 4.`;
}

interface PhotoView {
  readonly photo: Photo;
  readonly index: number;
  readonly published: PublishedPhoto | null;
  readonly items: readonly CalloutItem[];
  readonly lengths: readonly PhotoLength[];
}

function photoView({ photo, index, published, items, lengths }: PhotoView): string {
  const anchor = photoAnchor(index);
  const frame = frameSize(published ?? WITHOUT_PICTURE);
  const picture = published === null ? '' : photoPicture(published, { alt: photo.alt, sizes: SIZES[frame.kind] });
  const inside =
    picture === ''
      ? `<svg class="ph-none" role="img" aria-label="${escapeText(photo.alt)}" viewBox="0 0 ${frame.picture.width} ${frame.picture.height}"></svg><p>Not published. ${sentence(photo.alt)}</p>`
      : picture;
  const label = `Photo ${index + 1}: parts by number`;
  const drawn = drawnLengths(photo, lengths);
  const near = photoNear(frame.picture, items, drawn, label);
  const over = photoOver(anchor, items, drawn);
  return (
    `<figure class="photo ph-${frame.kind}${near.kind === 'in rows' ? ' ph-rows' : ''}" id="${anchor}"><div class="ph-sheet"><div class="ph-picture">${inside}${over}${near.svg}</div>` +
    `${photoAround(frame, items, drawn, label)}</div>` +
    `<figcaption>${captionOf(photo, index)}${fullSize(published)}</figcaption>${near.kind === 'on plates' ? keysOf(items) : ''}</figure>`
  );
}

/** What the small plates of a crowded photo lead to, for a narrow page: links that a finger meets. */
function keysOf(items: readonly CalloutItem[]): string {
  const keys = items.map(({ number, title, rowAnchor }) => {
    const [reference = '', ...role] = title.split(', ');
    return `<li><a href="#${rowAnchor}" data-item="${number}"><b>${number}</b> <span class="mono">${escapeText(reference)}</span> <span class="soft">${escapeText(role.join(', '))}</span></a></li>`;
  });
  return `<ol class="ph-keys">${keys.join('')}</ol>`;
}

function drawnLengths(photo: Photo, lengths: readonly PhotoLength[]): readonly DrawnLength[] {
  const scale =
    photo.scale === null
      ? []
      : [{ name: '', value: photo.scale.length.quantity.written, isScale: true, from: photo.scale.from, to: photo.scale.to }];
  return [
    ...scale,
    ...lengths.map((length) => ({
      name: length.name,
      value: shownLength(length.length),
      isScale: false,
      from: length.from,
      to: length.to,
    })),
  ];
}

function captionOf(photo: Photo, index: number): string {
  const words = [photo.title, photo.note].filter((text) => text !== null).map((text) => ` ${closed(sentence(text))}`);
  const credit = photo.credit === null ? '' : ` Taken by ${escapeText(photo.credit)}.`;
  return `<b>Photo ${index + 1}.</b>${words.join('')}${credit}`;
}

function closed(text: string): string {
  return /[.!?…]$/u.test(text) ? text : `${text}.`;
}

function fullSize(published: PublishedPhoto | null): string {
  const largest = published === null ? null : largestPhoto(published);
  return largest === null
    ? ''
    : ` <a class="ph-full" href="${escapeText(largest.address)}">Full size, ${largest.width} × ${largest.height}</a>`;
}
