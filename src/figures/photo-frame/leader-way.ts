import { boxesBetween, boxOfSegment, crossesBox, type Box } from './box.ts';
import type { Gate } from './gate.ts';
import { isUpright } from './picture-edges.ts';
import type { PlacedCallout } from './placed-callout.ts';
import { distance, segmentsApart, segmentsMeet, type Point, type Segment } from './segment.ts';

/** What leaders are drawn around. */
export interface InTheWay {
  /** Labels of lengths. */
  readonly labels: readonly Box[];
  /** Dimension lines; a leader may cross one, but rather not. */
  readonly lines: readonly Segment[];
}

/** One way to lead a callout out, with what it costs by itself. */
export interface LeaderWay extends PlacedCallout {
  readonly cost: number;
  /** The leader within the picture. */
  readonly inside: Segment;
  readonly box: Box;
  /** Straight up or across, so that the box is the leader. */
  readonly isStraight: boolean;
}

/** Two leaders nearer than this are hard to tell apart; the nearer the worse. */
const LEADERS_APART = 14;

/** What things cost, in px of leader. */
const COST = { bend: 20, perSlant: 1.2, steep: 4, label: 900, line: 60, perNear: 14, merged: 300 } as const;

/** Weighs a way: its length, how far its dot moved, how much it slants, what it covers. @param wanted where the dot belongs */
export function leaderWay(index: number, dot: Point, { side, gate, circle }: Gate, wanted: Point, inTheWay: InTheWay): LeaderWay {
  const inside = { from: dot, to: gate };
  const [across, down] = [Math.abs(gate.x - dot.x), Math.abs(gate.y - dot.y)];
  const [slant, depth] = isUpright(side) ? [across, down] : [down, across];
  const bend = slant === 0 ? 0 : COST.bend + COST.perSlant * slant + COST.steep * Math.max(0, slant - depth);
  const cost = distance(dot, gate) + distance(gate, circle) + 2 * distance(dot, wanted) + bend + costOfCrossing(inside, inTheWay);
  return { index, side, dot, gate, circle, cost, inside, box: boxOfSegment(inside), isStraight: slant === 0 };
}

function costOfCrossing(inside: Segment, { labels, lines }: InTheWay): number {
  let cost = 0;
  for (const label of labels) if (crossesBox(inside, label)) cost += COST.label;
  for (const line of lines) if (segmentsMeet(inside, line)) cost += COST.line;
  return cost;
}

/**
 * What two leaders cost each other: nothing where they are well apart, and without bound where they meet or their circles do.
 *
 * @param circlesApart least distance of the middles of two circles
 */
export function costTogether(one: LeaderWay, other: LeaderWay, circlesApart: number): number {
  const across = one.circle.x - other.circle.x;
  const down = one.circle.y - other.circle.y;
  if (across * across + down * down < circlesApart * circlesApart - 1e-6) return Infinity;
  const between = boxesBetween(one.box, other.box);
  if (between >= LEADERS_APART) return 0;
  const apart = one.isStraight && other.isStraight ? between : segmentsApart(one.inside, other.inside);
  if (apart === 0) return Infinity;
  return apart >= LEADERS_APART ? 0 : COST.perNear * (LEADERS_APART - apart) + (apart < 2 ? COST.merged : 0);
}
