import { boxAround, boxesAreNear, crossesBox, holds, type Box } from './box.ts';
import type { PictureSize } from './frame-size.ts';
import { distance, type Point, type Segment } from './segment.ts';

/** A length drawn into a photo. */
export interface DrawnLength {
  /** What is measured: "creepage T1"; empty for the known length. */
  readonly name: string;
  /** "6.4 mm", or why there is none. */
  readonly value: string;
  /** The known length that the others are measured by. */
  readonly isScale: boolean;
  /** Fractions of width and height. */
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** One line of a label; `down` leads from the label's middle to the line's. */
interface LabelLine {
  readonly text: string;
  readonly down: number;
}

/** The label of a length in its place, in px from the picture's corner. */
export interface PlacedLabel {
  readonly lines: readonly LabelLine[];
  readonly middle: Point;
  /** Box of the letters. */
  readonly box: Box;
  /** From the label to the middle of its dimension line, where it could not stand beside it. */
  readonly tie: Segment | null;
}

/** Lettering of labels: size of the type in px and the longest line in letters. */
export interface Lettering {
  readonly size: number;
  readonly longest: number;
}

/** What labels keep clear of. */
export interface Occupied {
  readonly boxes: readonly Box[];
  readonly leaders: readonly Segment[];
}

/** Widths of the mono in parts of its size, and from one line to the next. */
const LETTER_WIDTH = 0.5;
const LINE_HEIGHT = 1.2;
/** Free around the letters, and between labels and what else is drawn. */
const PADDING = 4;
const CLEAR = 3;
/** A label that stands further from its line is tied to it. */
const BESIDE = 30;
/** A label no further from its line than this share of the picture's longer edge. */
const MOST_TIE = 0.35;
/** Steps of the search for a free place, in px. */
const STEP = 10;

/** Dimension line of a length in px. */
export function dimensionLine({ from, to }: DrawnLength, { width, height }: PictureSize): Segment {
  return { from: { x: from[0] * width, y: from[1] * height }, to: { x: to[0] * width, y: to[1] * height } };
}

/**
 * Places the labels one after the other: beside the dimension line where that is free, else at the free place nearest to it. None lies over
 * another, over what is occupied, or out of the picture. Where there is no room for name and value the value stands alone, and where there
 * is none for that either the label is null: the table of lengths names both.
 */
export function placeLabels(
  picture: PictureSize,
  lengths: readonly DrawnLength[],
  occupied: Occupied,
  lettering: Lettering,
): readonly (PlacedLabel | null)[] {
  const lines = lengths.map((length) => dimensionLine(length, picture));
  const placed: (PlacedLabel | null)[] = [];
  for (const [index, length] of lengths.entries()) {
    const line = lines[index];
    if (line === undefined) continue;
    const others = placed.flatMap((label) => (label === null ? [] : [label.box]));
    const boxes = [...occupied.boxes, ...others];
    const place = (texts: readonly string[], leaders: readonly Segment[]): PlacedLabel | null =>
      freePlace({ picture, line, lettering }, texts, { boxes, leaders });
    // Rather over no dimension line at all; where that leaves no place, over one.
    const clear = [...occupied.leaders, ...lines];
    const whole = labelLines(length, lettering.longest);
    placed.push(
      place(whole, clear) ?? place(whole, occupied.leaders) ?? place([length.value], clear) ?? place([length.value], occupied.leaders),
    );
  }
  return placed;
}

interface LabelGround {
  readonly picture: PictureSize;
  readonly line: Segment;
  readonly lettering: Lettering;
}

function freePlace({ picture, line, lettering }: LabelGround, texts: readonly string[], occupied: Occupied): PlacedLabel | null {
  const width = Math.max(...texts.map((text) => text.length)) * LETTER_WIDTH * lettering.size + 2 * PADDING;
  const step = LINE_HEIGHT * lettering.size;
  const height = texts.length * step + 2;
  const field = { left: PADDING, top: PADDING, right: picture.width - PADDING, bottom: picture.height - PADDING };
  const isFree = (box: Box): boolean =>
    holds(field, box) &&
    occupied.boxes.every((other) => !boxesAreNear(box, other, CLEAR)) &&
    occupied.leaders.every((leader) => !crossesBox(leader, grown(box)));
  for (const middle of placesAround(line, width, height, picture)) {
    const box = boxAround(middle, width, height);
    if (!isFree(box)) continue;
    const lines = texts.map((text, index) => ({ text, down: (index - (texts.length - 1) / 2) * step }));
    return { lines, middle, box, tie: tieOf(box, middleOf(line)) };
  }
  return null;
}

function grown({ left, right, top, bottom }: Box): Box {
  return { left: left - CLEAR, right: right + CLEAR, top: top - CLEAR, bottom: bottom + CLEAR };
}

/** "creepage T1 6.4 mm" in one line, or in several of whole words where it is long. */
function labelLines({ name, value }: DrawnLength, longest: number): readonly string[] {
  const whole = name === '' ? value : `${name} ${value}`;
  if (whole.length <= longest) return [whole];
  const lines: string[] = [];
  for (const word of [...name.split(' '), value]) {
    const last = lines.at(-1);
    if (last === undefined || last.length + 1 + word.length > longest) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}

/** Places for the middle of a label: beside the line, and then ring by ring as far as a tie may lead. */
function* placesAround(line: Segment, width: number, height: number, picture: PictureSize): Generator<Point> {
  yield* besides(line, width, height);
  const middle = middleOf(line);
  const most = MOST_TIE * Math.max(picture.width, picture.height);
  for (let ring = 1; ring * STEP <= most; ring += 1) yield* ringAround(middle, ring);
}

/** Above, below, right and left of the middle of the line, then of its quarters. */
function besides({ from, to }: Segment, width: number, height: number): readonly Point[] {
  const isLevel = Math.abs(to.x - from.x) >= Math.abs(to.y - from.y);
  const [aside, above] = [width / 2 + 6, height / 2 + 5];
  return [0.5, 0.25, 0.75].flatMap((share) => {
    const at = { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
    const upright = [-above, above].map((y) => ({ x: at.x, y: at.y + y }));
    const level = [aside, -aside].map((x) => ({ x: at.x + x, y: at.y }));
    return isLevel ? [...upright, ...level] : [...level, ...upright];
  });
}

/** The places of a square ring, those straight above, below, right and left first. */
function* ringAround({ x, y }: Point, ring: number): Generator<Point> {
  const away = ring * STEP;
  for (let step = 0; step <= ring; step += 1) {
    for (const along of step === 0 ? [0] : [step * STEP, -step * STEP]) {
      yield { x: x + along, y: y - away };
      yield { x: x + along, y: y + away };
      yield { x: x + away, y: y + along };
      yield { x: x - away, y: y + along };
    }
  }
}

function middleOf({ from, to }: Segment): Point {
  return { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
}

/** From the nearest point of the label's box to the middle of its line, where that is not beside it. */
function tieOf({ left, right, top, bottom }: Box, middle: Point): Segment | null {
  const from = { x: Math.min(right, Math.max(left, middle.x)), y: Math.min(bottom, Math.max(top, middle.y)) };
  return distance(from, middle) <= BESIDE ? null : { from, to: middle };
}
