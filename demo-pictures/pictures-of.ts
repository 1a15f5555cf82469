import type { Entry } from '../src/entry/entry.ts';
import { boardBottom, boardTop } from './board-picture.ts';
import { calloutsOf } from './callouts.ts';
import { exterior } from './exterior-picture.ts';
import type { Lettering } from './lettering.ts';
import type { BoardPlan } from './board-plan.ts';
import type { MarkedDistance, PhotoLines } from './photos-section.ts';
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
    withDistances(picture('board-top.jpg', words.top, boardTop(entry, placed, lettering)), entry, placed.plan),
    ...(words.bottom === undefined ? [] : [picture('board-bottom.jpg', words.bottom, boardBottom(entry, placed, lettering))]),
  ];
}

/** The bare band between primary and secondary, marked from edge to edge low in the picture, where the entry has a place of insulation. */
function withDistances(picture: DevicePicture, entry: Entry, { barrier, boards }: BoardPlan): DevicePicture {
  const [place] = entry.insulation;
  const [board] = boards;
  if (barrier === null || place === undefined || board === undefined) return picture;
  const { from, to, millimetres } = picture.drawn.scale;
  const across = (x: number): number => from[0] + (x * (to[0] - from[0])) / millimetres;
  const y = from[1] - 0.19;
  const ends = { from: [across(barrier.x - barrier.gap / 2), y], to: [across(barrier.x + barrier.gap / 2), y] } as const;
  const distance: MarkedDistance = { name: 'bare band', ...ends, place: place.id };
  return { ...picture, lines: { ...picture.lines, distances: [distance] } };
}
