import { boxesAreNear, boxOfSegment, crossesBox, type Box } from './box.ts';
import type { PictureSize } from './frame-size.ts';
import { circleAt, CIRCLES_APART, edgeLength, gateAt, isClearOfLetters, isUpright, MOST_SHIFT, SIDES } from './picture-edges.ts';
import type { PlacedCallout } from './placed-callout.ts';
import { distance, type Point } from './segment.ts';

/** How far a dot may move along the edge so that its leader finds a lane. */
const SHIFTS = [0, -5, 5, -MOST_SHIFT, MOST_SHIFT];
/** Two leaders, or a leader and another's dot, keep this apart: room to tell them apart at a glance, else just enough to see two lines. */
const LEADERS_APART = [18, 9] as const;
/** More callouts than this never stand so far apart; the search need not try. */
const MOST_AT_EASE = 20;
/** The search may turn back so many times; after that some leaders bend. */
const MOST_TURNS = 4;

/** One way to lead a dot straight out. */
export interface StraightWay extends PlacedCallout {
  /** Place along the edge. */
  readonly lane: number;
  readonly cost: number;
  /** A straight leader is its own box. */
  readonly box: Box;
}

/** Every way to lead these dots straight out, of each the shortest first. */
export function straightWays(picture: PictureSize, dots: readonly Point[]): readonly (readonly StraightWay[])[] {
  return dots.map((dot, index) => candidatesOf(picture, dot, index));
}

/**
 * Leaders straight up or across for every dot, or null where none such were found.
 *
 * @param ways of each dot, the shortest first
 * @param labels none of which a leader crosses
 */
export function straightLeaders(ways: readonly (readonly StraightWay[])[], labels: readonly Box[]): readonly PlacedCallout[] | null {
  const choices = ways.map((each) => each.filter(({ dot, gate }) => labels.every((label) => !crossesBox({ from: dot, to: gate }, label))));
  for (const apart of choices.length > MOST_AT_EASE ? LEADERS_APART.slice(1) : LEADERS_APART) {
    const chosen = search(choices, apart);
    if (chosen === null) continue;
    return improved(chosen, choices, apart).map(({ index, side, dot, gate, circle }) => ({ index, side, dot, gate, circle }));
  }
  return null;
}

/** Every way one dot can be led out, the shortest first. */
function candidatesOf(picture: PictureSize, dot: Point, index: number): readonly StraightWay[] {
  const all = SIDES.flatMap((side) =>
    SHIFTS.map((shift): StraightWay | null => {
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
        box: boxOfSegment({ from: moved, to: gate }),
        cost: distance(moved, gate) + 2 * Math.abs(shift),
      };
    }),
  );
  return all.filter((candidate) => candidate !== null).sort((a, b) => a.cost - b.cost);
}

/** Depth first: the callout with the fewest ways left takes its shortest, which takes ways from the others. Null when the tries are used up. */
function search(choices: readonly (readonly StraightWay[])[], apart: number): readonly StraightWay[] | null {
  let tries = 0;
  const place = (open: readonly (readonly StraightWay[])[], chosen: readonly StraightWay[]): readonly StraightWay[] | null => {
    const [next, ...rest] = fewestFirst(open);
    if (next === undefined) return chosen;
    for (const candidate of next) {
      tries += 1;
      if (tries > choices.length + MOST_TURNS) return null;
      const left = leftBeside(candidate, rest, apart);
      if (left === null) continue;
      const placed = place(left, [...chosen, candidate]);
      if (placed !== null) return placed;
    }
    return null;
  };
  return place(choices, []);
}

/** The ways that one taken leaves to the others; null where it leaves one of them none. */
function leftBeside(
  taken: StraightWay,
  open: readonly (readonly StraightWay[])[],
  apart: number,
): readonly (readonly StraightWay[])[] | null {
  const left: (readonly StraightWay[])[] = [];
  for (const ways of open) {
    const free = ways.filter((way) => !areInConflict(taken, way, apart));
    if (free.length === 0) return null;
    left.push(free.length === ways.length ? ways : free);
  }
  return left;
}

/** The callout with the fewest ways left first; the others in their order. */
function fewestFirst(open: readonly (readonly StraightWay[])[]): readonly (readonly StraightWay[])[] {
  const fewest = open.reduce((at, ways, index) => (ways.length < (open[at]?.length ?? 0) ? index : at), 0);
  const first = open[fewest];
  return first === undefined ? [] : [first, ...open.filter((_, index) => index !== fewest)];
}

/**
 * Each callout takes a shorter way where one is free, or where one other gives way to it at less than it saves, until none does; the sum
 * falls with every change, so it ends.
 */
function improved(chosen: readonly StraightWay[], choices: readonly (readonly StraightWay[])[], apart: number): readonly StraightWay[] {
  let now: readonly StraightWay[] = [...chosen].sort((a, b) => a.index - b.index);
  for (let next = betterOf(now, choices, apart); next !== null; next = betterOf(now, choices, apart)) now = next;
  return now;
}

/** One change for the better, or null where there is none. */
function betterOf(now: readonly StraightWay[], choices: readonly (readonly StraightWay[])[], apart: number): readonly StraightWay[] | null {
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

function areInConflict(one: StraightWay, other: StraightWay, apart: number): boolean {
  if (one.side === other.side && Math.abs(one.lane - other.lane) < CIRCLES_APART) return true;
  return boxesAreNear(one.box, other.box, apart);
}
