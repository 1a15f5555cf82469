/** A place that is taken, in pixels. */
interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where words may stand: the point of their baseline, and which end of them it is. */
interface LabelSpot {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'mid' | 'end';
}

/** Keeps what is taken inside a frame, so that no words cover others or a mark. */
export interface LabelRoom {
  take(box: Box): void;
  /** The first spot at which the words are free, taken with it; null where there is none, or the same words stand close by. */
  find(words: string, face: keyof typeof LETTER, spots: readonly LabelSpot[]): LabelSpot | null;
}

/** Width of a letter at most by the face of the words, and height of a line, in pixels. */
const LETTER = { number: 7.6, sentence: 6.4 } as const;
const LINE = 15;
/** Words that say the same within this distance are said once. */
const SAME_WITHIN = 26;

export function labelRoom(frame: Box): LabelRoom {
  const taken: Box[] = [];
  const said: { readonly words: string; readonly box: Box }[] = [];
  const isFree = (box: Box): boolean => isInside(box, frame) && !taken.some((other) => overlap(box, other));
  return {
    take(box) {
      taken.push(box);
    },
    find(words, face, spots) {
      const boxes = spots.map((spot) => ({ spot, box: boxOf(words.length * LETTER[face], spot) }));
      if (boxes.some(({ box }) => said.some((other) => other.words === words && isNear(box, other.box)))) return null;
      const found = boxes.find(({ box }) => isFree(box));
      if (found === undefined) return null;
      taken.push(found.box);
      said.push({ words, box: found.box });
      return found.spot;
    },
  };
}

function boxOf(width: number, { x, y, anchor }: LabelSpot): Box {
  const from = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { x: from, y: y - LINE + 3, width, height: LINE };
}

function isInside(box: Box, frame: Box): boolean {
  return box.x >= frame.x && box.x + box.width <= frame.x + frame.width && box.y >= frame.y && box.y + box.height <= frame.y + frame.height;
}

function overlap(one: Box, other: Box): boolean {
  const across = one.x < other.x + other.width && other.x < one.x + one.width;
  return across && one.y < other.y + other.height && other.y < one.y + one.height;
}

function isNear(one: Box, other: Box): boolean {
  return Math.abs(one.x - other.x) < SAME_WITHIN && Math.abs(one.y - other.y) < SAME_WITHIN;
}
