import type { Entry } from '../src/entry/entry.ts';
import { boardBottom, boardTop } from './board-picture.ts';
import { calloutsOf } from './callouts.ts';
import { exterior } from './exterior-picture.ts';
import type { Lettering } from './lettering.ts';
import type { PhotoLines } from './photos-section.ts';
import { PICTURE_WORDS, type PictureWords } from './picture-words.ts';
import type { DrawnPicture } from './picture.ts';
import { placeParts } from './place-parts.ts';

/** A picture of a device: its drawing, and what the entry says of it. */
export interface DevicePicture {
  readonly drawn: DrawnPicture;
  readonly lines: PhotoLines;
}

/** Boards whose top is full of tall parts: what is soldered to a surface was put on the other side. */
const SURFACE_BELOW: readonly string[] = ['ostlewick-lantern-140', 'skelderby-trine-65'];

/** All pictures of a device in the order of its entry. @throws where nobody has written its words. */
export function picturesOf(entry: Entry, lettering: Lettering): readonly DevicePicture[] {
  const words = PICTURE_WORDS[entry.slug];
  if (words === undefined) throw new Error(`there are no words for the pictures of ${entry.slug}`);
  const placed = placeParts(entry, SURFACE_BELOW.includes(entry.slug));
  const picture = (file: string, said: PictureWords, drawn: DrawnPicture): DevicePicture => ({
    drawn,
    lines: { file, ...said, callouts: calloutsOf(entry, drawn), scale: drawn.scale },
  });
  return [
    picture('exterior.jpg', words.exterior, exterior(entry, lettering)),
    picture('board-top.jpg', words.top, boardTop(entry, placed, lettering)),
    ...(words.bottom === undefined ? [] : [picture('board-bottom.jpg', words.bottom, boardBottom(entry, placed, lettering))]),
  ];
}
