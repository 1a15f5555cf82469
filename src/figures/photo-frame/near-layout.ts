import { boxAround } from './box.ts';
import { crowdedLeaders } from './crowded-leaders.ts';
import { FIGURES_ACROSS, type PictureSize } from './frame-size.ts';
import type { Gate } from './gate.ts';
import { dimensionLine, placeLabels, type DrawnLength, type Lettering, type PlacedLabel } from './length-label.ts';
import { placePlates, ON_PART, plateSize } from './near-plates.ts';
import { distance, pointApart, segmentsMeet, type Point, type Segment } from './segment.ts';
import { spreadPoints } from './spread-points.ts';

/** Width of the picture on the narrowest page, for which the narrow drawing is laid out. */
const NARROW = 300;
/** Radius of the circles: targets of 24 px. */
export const NEAR_RADIUS = 12;
const CIRCLE: PictureSize = { width: 2 * NEAR_RADIUS, height: 2 * NEAR_RADIUS };
/** Middles of two circles stand this far apart. */
const APART = 2 * NEAR_RADIUS + 1;
/** Circles that cover more than this share of a picture are taken out of it. */
const MOST_COVERED = 0.2;
/** Two dots nearer than this would read as one. */
const DOTS_APART = 7;
const DOT_INSET = 4;

/** Distances of the rows of circles from the picture's edges: above, the figures stand between; both in px. */
const ROWS = { top: [-36, -64], bottom: [20, 48] } as const;
/** From one lane to the next: the leader of the outer row passes between two circles of the inner one. */
const LANES_APART = 16;
const FIRST_LANE = 8;

const LETTERING: Lettering = { size: 13, longest: 22 };

/** One numbered mark of the narrow drawing, in px of a picture 300 wide. */
export interface NearMark {
  readonly index: number;
  /** Where the part is. */
  readonly dot: Point;
  readonly circle: Point;
  /** Where the leader goes through the picture's edge; null for a circle within the picture. */
  readonly gate: Point | null;
}

/** The narrow drawing of a photo. Its places are drawn in shares of the picture, so that on a wider page everything only moves apart. */
export interface NearLayout {
  readonly size: PictureSize;
  /** Circles stand on their parts, or in rows above and below the picture; more than fit there are numbers on small plates. */
  readonly kind: 'on the parts' | 'in rows' | 'on plates';
  /** What one mark within the picture covers. */
  readonly mark: PictureSize;
  readonly marks: readonly NearMark[];
  /** One of each length, in their order; the known length has none. */
  readonly labels: readonly (PlacedLabel | null)[];
}

/**
 * Circles on their parts, moved apart where they would overlap. Where that hides too much of the picture, or a leader would go through
 * another or through a circle, the circles stand in rows above and below. Where there are more than the rows hold, the numbers stand on
 * small plates on their parts or beside them.
 *
 * @param figures How many figures the longest number has.
 */
export function layoutNear(picture: PictureSize, places: readonly Point[], lengths: readonly DrawnLength[], figures = 2): NearLayout {
  const size = { width: NARROW, height: (NARROW * picture.height) / picture.width };
  const wanted = places.map(({ x, y }) => ({ x: x * size.width, y: y * size.height }));
  const shown = lengths.filter(({ isScale }) => !isScale);
  const onParts = marksOnParts(size, wanted);
  const gates = rowGates(size);
  const covered = (places.length * Math.PI * NEAR_RADIUS ** 2) / (size.width * size.height);
  const kind = covered <= MOST_COVERED && !isTangled(onParts) ? 'on the parts' : places.length <= gates.length ? 'in rows' : 'on plates';
  const mark = kind === 'on plates' ? plateSize(figures) : CIRCLE;
  const marks =
    kind === 'in rows' ? marksInRows(size, wanted, gates, shown) : kind === 'on plates' ? marksOnPlates(size, wanted, mark) : onParts;
  return { size, kind, mark, marks, labels: placeLabels(size, shown, occupiedBy(marks, mark), LETTERING) };
}

function marksOnPlates(size: PictureSize, wanted: readonly Point[], plate: PictureSize): readonly NearMark[] {
  const dots = spreadPoints(wanted, DOTS_APART, fieldOf(size, DOT_INSET));
  const middles = placePlates(dots, plate, size);
  return dots.map((dot, index) => ({ index, dot, circle: middles[index] ?? dot, gate: null }));
}

function marksOnParts(size: PictureSize, wanted: readonly Point[]): readonly NearMark[] {
  const circles = spreadPoints(wanted, APART, fieldOf(size, NEAR_RADIUS));
  return wanted.map((dot, index) => ({ index, dot, circle: circles[index] ?? dot, gate: null }));
}

function marksInRows(
  size: PictureSize,
  wanted: readonly Point[],
  gates: readonly Gate[],
  lengths: readonly DrawnLength[],
): readonly NearMark[] {
  const dots = spreadPoints(wanted, DOTS_APART, fieldOf(size, DOT_INSET));
  const lines = lengths.map((length) => dimensionLine(length, size));
  const before = placeLabels(size, lengths, { boxes: dots.map((dot) => boxAround(dot, 8, 8)), leaders: [] }, LETTERING);
  const labels = before.flatMap((label) => (label === null ? [] : [label.box]));
  const placed = crowdedLeaders({ dots, gates, circlesApart: APART, straight: [], inTheWay: { labels, lines } });
  return placed.map(({ index, dot, circle, gate }) => ({ index, dot, circle, gate }));
}

function fieldOf({ width, height }: PictureSize, inset: number): Segment {
  return { from: { x: inset, y: inset }, to: { x: width - inset, y: height - inset } };
}

/** The leader of a mark within the picture; null where the circle covers its part. */
export function nearLeader({ dot, circle, gate }: NearMark): Segment | null {
  if (gate !== null) return { from: dot, to: gate };
  return distance(dot, circle) > ON_PART ? { from: dot, to: circle } : null;
}

/** Whether circles overlap, or a leader goes through another or through the circle of another. */
function isTangled(marks: readonly NearMark[]): boolean {
  return marks.some((one, index) => {
    const leader = nearLeader(one);
    return marks.some((other, place) => {
      if (place === index) return false;
      if (distance(one.circle, other.circle) < APART - 1e-9) return true;
      if (leader === null) return false;
      const crossing = nearLeader(other);
      return pointApart(other.circle, leader) < NEAR_RADIUS + 1 || (crossing !== null && segmentsMeet(leader, crossing));
    });
  });
}

/** Gates of both rows above and below. Above, none at a figure. */
function rowGates({ width, height }: PictureSize): readonly Gate[] {
  const column = width / FIGURES_ACROSS;
  const between = Array.from({ length: FIGURES_ACROSS + 1 }, (_, index) => [index * column - FIRST_LANE, index * column + FIRST_LANE]);
  const above = between.flat().filter((lane) => lane > 0 && lane < width);
  const below = Array.from(
    { length: Math.floor((width - 2 * FIRST_LANE) / LANES_APART) + 1 },
    (_, index) => FIRST_LANE + index * LANES_APART,
  );
  return [
    ...above.map((x, index): Gate => ({ side: 'top', gate: { x, y: 0 }, circle: { x, y: ROWS.top[index % 2 === 0 ? 0 : 1] } })),
    ...below.map((x, index): Gate => ({
      side: 'bottom',
      gate: { x, y: height },
      circle: { x, y: height + ROWS.bottom[index % 2 === 0 ? 0 : 1] },
    })),
  ];
}

function occupiedBy(marks: readonly NearMark[], { width, height }: PictureSize): Parameters<typeof placeLabels>[2] {
  const boxes = marks.map(({ dot, circle, gate }) => (gate === null ? boxAround(circle, width, height) : boxAround(dot, 8, 8)));
  return { boxes, leaders: marks.flatMap((mark) => nearLeader(mark) ?? []) };
}
