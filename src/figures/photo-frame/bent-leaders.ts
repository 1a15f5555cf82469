import type { PictureSize } from './frame-size.ts';
import { circleAt, CIRCLES_APART, edgeLength, gateAt, isClearOfLetters, SIDES } from './picture-edges.ts';
import type { PlacedCallout } from './placed-callout.ts';
import { distance, segmentsMeet, type Point, type Segment } from './segment.ts';

type Gate = Omit<PlacedCallout, 'index' | 'dot'>;

/**
 * Leaders for a crowd: aslant to a gate in the frame, straight out from there. Each dot takes the nearest free gate; then two leaders
 * that meet change their gates, which shortens the sum of both (the triangle's inequality), so it ends with none meeting.
 */
export function bentLeaders(picture: PictureSize, dots: readonly Point[]): readonly PlacedCallout[] {
  const gates = gatesOf(picture);
  const placed: PlacedCallout[] = [];
  for (const [index, dot] of dots.entries()) {
    const free = gates.filter((gate) => !placed.some((other) => other.gate === gate.gate));
    const [nearest] = free.sort((a, b) => distance(dot, a.gate) - distance(dot, b.gate));
    if (nearest !== undefined) placed.push({ ...nearest, index, dot });
  }
  return withoutMeeting(placed);
}

/** Gates along all edges as dense as circles allow, none at a zone letter. */
function gatesOf(picture: PictureSize): readonly Gate[] {
  return SIDES.flatMap((side) => {
    const lanes: number[] = [];
    for (let lane = 4; lane <= edgeLength(side, picture) - 4; lane += 1) {
      const last = lanes.at(-1);
      if ((last === undefined || lane - last >= CIRCLES_APART) && isClearOfLetters(side, lane, picture)) lanes.push(lane);
    }
    return lanes.map((lane) => ({ side, gate: gateAt(side, lane, picture), circle: circleAt(side, lane, picture) }));
  });
}

function withoutMeeting(placed: readonly PlacedCallout[]): readonly PlacedCallout[] {
  const now = [...placed];
  for (let hasChanged = true; hasChanged;) {
    hasChanged = false;
    for (const [i, one] of now.entries()) {
      for (let j = i + 1; j < now.length; j += 1) {
        const other = now[j];
        const first = now[i];
        if (other === undefined || first === undefined || !segmentsMeet(inside(first), inside(other))) continue;
        const [a, b] = [
          { ...other, index: one.index, dot: one.dot },
          { ...first, index: other.index, dot: other.dot },
        ];
        if (lengths(a, b) >= lengths(first, other) - 1e-9) continue;
        now[i] = a;
        now[j] = b;
        hasChanged = true;
      }
    }
  }
  return now;
}

function inside({ dot, gate }: PlacedCallout): Segment {
  return { from: dot, to: gate };
}

function lengths(a: PlacedCallout, b: PlacedCallout): number {
  return distance(a.dot, a.gate) + distance(b.dot, b.gate);
}
