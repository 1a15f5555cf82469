import type { Gate } from './gate.ts';
import { costTogether, leaderWay, type InTheWay, type LeaderWay } from './leader-way.ts';
import { isUpright, MOST_SHIFT, type Side } from './picture-edges.ts';
import type { PlacedCallout } from './placed-callout.ts';
import { distance, type Point } from './segment.ts';
import { shortestPairing } from './shortest-pairing.ts';

/** Rounds of improvement; each goes through all callouts. */
const MOST_ROUNDS = 2;
/** As many ways of a callout are looked at, the cheapest first. */
const MOST_WAYS = 10;
/** As many ways of one that gives way. */
const MOST_YIELDING = 4;
/** What others give way for, in px. */
const LEAST_GAIN = 8;

const NOBODY = -1;

/** A crowd of dots and how it can be led out. */
export interface Crowd {
  readonly dots: readonly Point[];
  /** Gates that can all be taken at once. */
  readonly gates: readonly Gate[];
  /** Least distance of the middles of two circles. */
  readonly circlesApart: number;
  /** Ways of each dot that lead straight out, beside those through the gates. */
  readonly straight: readonly (readonly PlacedCallout[])[];
  readonly inTheWay: InTheWay;
  /** The gate at a place along an edge, or null where none may be; left out where gates stand fast. */
  readonly gateAtLane?: (side: Side, lane: number) => Gate | null;
}

/** Ways of each dot, the cheapest first, and how far circles stand apart. */
interface Choices {
  readonly ways: readonly (readonly LeaderWay[])[];
  readonly circlesApart: number;
}

/**
 * Leaders for a crowd. First every dot is paired with a gate so that all leaders together are shortest: of two that cross, the sum of both
 * would be shorter with their gates changed, so that none do. Then callouts take better ways one or two at a time, straight ones above all,
 * and never one that meets another leader. Dots for which there is no gate are left out.
 */
export function crowdedLeaders({ dots, gates, circlesApart, straight, inTheWay, gateAtLane }: Crowd): readonly PlacedCallout[] {
  const led = dots.slice(0, gates.length);
  const pairs = shortestPairing(led.length, gates.length, (dot, gate) => lengthTo(led[dot], gates[gate]));
  const ways = led.map((dot, index) => waysOf(index, dot, gates, straight[index] ?? [], inTheWay));
  const start = led.flatMap((dot, index) => {
    const gate = gates[pairs[index] ?? -1];
    return gate === undefined ? [] : [leaderWay(index, dot, gate, dot, inTheWay)];
  });
  const choices = { ways, circlesApart };
  const better = improved(start, choices);
  const final = gateAtLane === undefined ? better : slid(better, led, choices, inTheWay, gateAtLane);
  return final.map(({ index, side, dot, gate, circle }) => ({ index, side, dot, gate, circle }));
}

function lengthTo(dot: Point | undefined, gate: Gate | undefined): number {
  return dot === undefined || gate === undefined ? 0 : distance(dot, gate.gate) + distance(gate.gate, gate.circle);
}

/** The cheapest ways of one dot. */
function waysOf(
  index: number,
  dot: Point,
  gates: readonly Gate[],
  straight: readonly PlacedCallout[],
  inTheWay: InTheWay,
): readonly LeaderWay[] {
  const ways: LeaderWay[] = [];
  for (const gate of gates) if (isModest(dot, gate)) ways.push(leaderWay(index, dot, gate, dot, inTheWay));
  for (const placed of straight.slice(0, MOST_WAYS)) ways.push(leaderWay(index, placed.dot, placed, dot, inTheWay));
  return ways.sort((a, b) => a.cost - b.cost).slice(0, MOST_WAYS);
}

/** Whether a leader to this gate is no more aslant than it is deep, or near to straight. */
function isModest(dot: Point, { side, gate }: Gate): boolean {
  const [across, down] = [Math.abs(gate.x - dot.x), Math.abs(gate.y - dot.y)];
  const [slant, depth] = isUpright(side) ? [across, down] : [down, across];
  return slant <= Math.max(depth, 40) && slant < 80;
}

/** The sum over all callouts falls with every change; the rounds only bound the time. */
function improved(start: readonly LeaderWay[], choices: Choices): readonly LeaderWay[] {
  let now = start;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const before = now;
    for (const at of start.keys()) now = withBetterWay(now, at, choices) ?? now;
    if (now === before) break;
  }
  return now;
}

/** Gates moved along their edges towards their dots, as far as the neighbours leave room: leaders that were nearly straight become so. */
function slid(
  leaders: readonly LeaderWay[],
  wanted: readonly Point[],
  choices: Choices,
  inTheWay: InTheWay,
  gateAtLane: NonNullable<Crowd['gateAtLane']>,
): readonly LeaderWay[] {
  let now = leaders;
  for (const [at, { side, dot, gate }] of leaders.entries()) {
    const place = wanted[at];
    if (place === undefined || laneOf(side, dot) === laneOf(side, gate)) continue;
    const lanes = now.filter((other, index) => index !== at && other.side === side).map((other) => laneOf(side, other.gate));
    const here = laneOf(side, gate);
    const low = Math.max(...lanes.filter((lane) => lane < here).map((lane) => lane + choices.circlesApart), 0);
    const high = Math.min(...lanes.filter((lane) => lane > here).map((lane) => lane - choices.circlesApart), Infinity);
    const lane = Math.min(high, Math.max(low, laneOf(side, place)));
    const near = gateAtLane(side, lane);
    if (near === null) continue;
    const isReached = Math.abs(lane - laneOf(side, place)) <= MOST_SHIFT;
    const moved = !isReached ? place : isUpright(side) ? { x: lane, y: place.y } : { x: place.x, y: lane };
    const way = leaderWay(at, moved, near, place, inTheWay);
    if (costBeside(now, way, choices) < costOf(now, at, choices) - 1e-6) now = now.with(at, way);
  }
  return now;
}

function laneOf(side: Side, { x, y }: Point): number {
  return isUpright(side) ? x : y;
}

/** With a better way for one callout; where exactly one other stands in it, that one gives way if both together gain. Null where there is none. */
function withBetterWay(now: readonly LeaderWay[], at: number, choices: Choices): readonly LeaderWay[] | null {
  const costNow = costOf(now, at, choices);
  for (const way of choices.ways[at] ?? []) {
    if (way.cost >= costNow - LEAST_GAIN) return null;
    if (costBeside(now, way, choices, NOBODY, costNow) < costNow - 1e-6) return now.with(at, way);
    const blocking = onlyBlocking(now, way, choices);
    const yielding = blocking === null ? null : wayThatYields(now, way, blocking, costNow, choices);
    if (yielding !== null) return now.with(at, way).with(yielding.index, yielding);
  }
  return null;
}

/** The way that one callout can take instead, so that both together cost less than now; null where there is none. */
function wayThatYields(now: readonly LeaderWay[], way: LeaderWay, blocking: number, costNow: number, choices: Choices): LeaderWay | null {
  const bothNow = costNow + costOf(now, blocking, choices, way.index);
  const cost = costBeside(now, way, choices, blocking, bothNow);
  if (cost >= bothNow) return null;
  const moved = now.with(way.index, way);
  const ways = choices.ways[blocking] ?? [];
  for (let place = 0; place < Math.min(ways.length, MOST_YIELDING); place += 1) {
    const yielding = ways[place];
    if (yielding === undefined || cost + yielding.cost >= bothNow) return null;
    if (cost + costBeside(moved, yielding, choices, NOBODY, bothNow - cost) < bothNow - 1e-6) return yielding;
  }
  return null;
}

/** What a callout costs as it stands, without what it costs together with one other. */
function costOf(now: readonly LeaderWay[], at: number, choices: Choices, without = NOBODY): number {
  const way = now[at];
  return way === undefined ? 0 : costBeside(now, way, choices, without);
}

/** What a way costs beside all other callouts but one; without bound where it meets another, and from the limit on not counted further. */
function costBeside(now: readonly LeaderWay[], way: LeaderWay, { circlesApart }: Choices, without = NOBODY, limit = Infinity): number {
  let cost = way.cost;
  for (const other of now) {
    if (other.index === way.index || other.index === without) continue;
    cost += costTogether(way, other, circlesApart);
    if (cost >= limit) return Infinity;
  }
  return cost;
}

/** The only callout that stands in a way; null where none or more do. */
function onlyBlocking(now: readonly LeaderWay[], way: LeaderWay, { circlesApart }: Choices): number | null {
  let blocking: number | null = null;
  for (const other of now) {
    if (other.index === way.index || costTogether(way, other, circlesApart) !== Infinity) continue;
    if (blocking !== null) return null;
    blocking = other.index;
  }
  return blocking;
}
