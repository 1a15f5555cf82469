import type { PictureSize } from './frame-size.ts';
import { circleAt, CIRCLES_APART, edgeLength, gateAt, isClearOfLetters, isUpright, SIDES } from './picture-edges.ts';
import type { PlacedCallout } from './placed-callout.ts';
import { distance, type Point } from './segment.ts';

/** How far a dot may move along the edge so that its leader finds a lane. */
const SHIFTS = [0, -5, 5, -9, 9];
/** Two leaders, or a leader and another's dot, keep this apart: room to tell them apart at a glance, else just enough to see two lines. */
const LEADERS_APART = [18, 9] as const;
/** The search gives up after so many tries, and the leaders bend. */
const MOST_TRIES = 300;

interface Candidate extends PlacedCallout {
  readonly lane: number;
  readonly cost: number;
}

/** Leaders straight up or across for every dot, or null where none such were found. */
export function straightLeaders(picture: PictureSize, dots: readonly Point[]): readonly PlacedCallout[] | null {
  const choices = dots.map((dot, index) => candidatesOf(picture, dot, index));
  for (const apart of LEADERS_APART) {
    const chosen = search(choices, apart);
    if (chosen === null) continue;
    return improved(chosen, choices, apart).map(({ index, side, dot, gate, circle }) => ({ index, side, dot, gate, circle }));
  }
  return null;
}

/** Every way one dot can be led out, the shortest first. */
function candidatesOf(picture: PictureSize, dot: Point, index: number): readonly Candidate[] {
  const all = SIDES.flatMap((side) =>
    SHIFTS.map((shift): Candidate | null => {
      const moved = isUpright(side) ? { x: dot.x + shift, y: dot.y } : { x: dot.x, y: dot.y + shift };
      const lane = isUpright(side) ? moved.x : moved.y;
      if (lane < 0 || lane > edgeLength(side, picture) || !isClearOfLetters(side, lane, picture)) return null;
      const gate = gateAt(side, lane, picture);
      return {
        index,
        side,
        dot: moved,
        gate,
        circle: circleAt(side, lane, picture),
        lane,
        cost: distance(moved, gate) + 2 * Math.abs(shift),
      };
    }),
  );
  return all.filter((candidate) => candidate !== null).sort((a, b) => a.cost - b.cost);
}

/** Depth first: the callout with the fewest ways left takes its shortest, which takes ways from the others. Null when the tries are used up. */
function search(choices: readonly (readonly Candidate[])[], apart: number): readonly Candidate[] | null {
  let tries = 0;
  const place = (open: readonly (readonly Candidate[])[], chosen: readonly Candidate[]): readonly Candidate[] | null => {
    const [next, ...rest] = fewestFirst(open);
    if (next === undefined) return chosen;
    for (const candidate of next) {
      tries += 1;
      if (tries > MOST_TRIES) return null;
      const left = rest.map((ways) => ways.filter((way) => !areInConflict(candidate, way, apart)));
      if (left.some((ways) => ways.length === 0)) continue;
      const placed = place(left, [...chosen, candidate]);
      if (placed !== null) return placed;
    }
    return null;
  };
  return place(choices, []);
}

/** The callout with the fewest ways left first; the others in their order. */
function fewestFirst(open: readonly (readonly Candidate[])[]): readonly (readonly Candidate[])[] {
  const fewest = open.reduce((at, ways, index) => (ways.length < (open[at]?.length ?? 0) ? index : at), 0);
  const first = open[fewest];
  return first === undefined ? [] : [first, ...open.filter((_, index) => index !== fewest)];
}

/**
 * Each callout takes a shorter way where one is free, or where one other gives way to it at less than it saves, until none does; the sum
 * falls with every change, so it ends.
 */
function improved(chosen: readonly Candidate[], choices: readonly (readonly Candidate[])[], apart: number): readonly Candidate[] {
  let now: readonly Candidate[] = [...chosen].sort((a, b) => a.index - b.index);
  for (let next = betterOf(now, choices, apart); next !== null; next = betterOf(now, choices, apart)) now = next;
  return now;
}

/** One change for the better, or null where there is none. */
function betterOf(now: readonly Candidate[], choices: readonly (readonly Candidate[])[], apart: number): readonly Candidate[] | null {
  for (const [at, current] of now.entries()) {
    for (const candidate of choices[at] ?? []) {
      const saved = current.cost - candidate.cost;
      if (saved <= 0) break;
      const [blocking, ...more] = now.filter((other) => other.index !== at && areInConflict(candidate, other, apart));
      if (blocking === undefined) return now.with(at, candidate);
      if (more.length > 0) continue;
      const moved = now.with(at, candidate);
      const way = choices[blocking.index]?.find(
        (each) =>
          each.cost < blocking.cost + saved - 1e-9 &&
          moved.every((other) => other.index === each.index || !areInConflict(each, other, apart)),
      );
      if (way !== undefined) return moved.with(blocking.index, way);
    }
  }
  return null;
}

function areInConflict(one: Candidate, other: Candidate, apart: number): boolean {
  if (one.side === other.side && Math.abs(one.lane - other.lane) < CIRCLES_APART) return true;
  const [a, b] = [boxOf(one), boxOf(other)];
  return a.left - apart < b.right && b.left - apart < a.right && a.top - apart < b.bottom && b.top - apart < a.bottom;
}

/** A straight leader is its own box. */
function boxOf({ dot, gate }: Candidate): { left: number; right: number; top: number; bottom: number } {
  return {
    left: Math.min(dot.x, gate.x),
    right: Math.max(dot.x, gate.x),
    top: Math.min(dot.y, gate.y),
    bottom: Math.max(dot.y, gate.y),
  };
}
