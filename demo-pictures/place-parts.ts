import { bodiesBySide, boardPlan, type Area, type BoardPlan, type Body } from './board-plan.ts';
import type { Entry } from '../src/entry/entry.ts';

/** A part where it stands; `turned` parts are drawn a quarter turn round. */
export interface PlacedBody extends Body {
  readonly area: Area;
  readonly turned: boolean;
}

/** Both sides of the boards; what found no room on top stands on the other side. */
export interface PlacedBoard {
  readonly plan: BoardPlan;
  readonly top: readonly PlacedBody[];
  readonly bottom: readonly PlacedBody[];
}

/** Room over a part for its reference on the silkscreen. */
const LETTERING = 1.5;
/** Clear distances that are tried, the most generous first. */
const CLEARANCES = [1.6, 1, 0.6, 0.35];
/** How far across the board the insulation may stand. */
const SHARES = [0.55, 0.5, 0.58, 0.6, 0.62, 0.64, 0.66];
/** Rank of transformer, Y capacitor and optocoupler from the upper edge down. */
const ORDERS: readonly (readonly [number, number, number])[] = [
  [1, 0, 2],
  [0, 1, 2],
  [2, 0, 1],
];

interface Trial {
  readonly clearance: number;
  readonly order: readonly [number, number, number];
  readonly surfaceBelow: boolean;
}
const STEP = 0.5;

interface Zone {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * Places the parts of an entry stage by stage from the mains to the ports. `surfaceBelow` puts what is soldered to a surface on the other
 * side, as on a board whose top is full of tall parts. The insulation stands where most parts find room.
 */
export function placeParts(entry: Entry, surfaceBelow: boolean): PlacedBoard {
  let best: PlacedBoard | null = null;
  let least = Infinity;
  for (const clearance of CLEARANCES) {
    for (const share of SHARES) {
      for (const order of ORDERS) {
        const placed = placeOn(entry, boardPlan(entry, share), { clearance, order, surfaceBelow });
        const cost = notWhereWanted(entry, placed, surfaceBelow);
        if (cost < least) [best, least] = [placed, cost];
        if (cost === 0) return placed;
      }
    }
  }
  if (best === null) throw new Error(`${entry.slug} has no board`);
  return best;
}

/** Square millimetres of bodies that stand on the other side or nowhere. */
function notWhereWanted(entry: Entry, { top, bottom }: PlacedBoard, surfaceBelow: boolean): number {
  const { primary, across, secondary, cells } = bodiesBySide(entry);
  const placed = new Set([...top, ...bottom].map(({ reference }) => reference));
  const nowhere = [...primary, ...across, ...secondary, ...cells].filter(({ reference }) => !placed.has(reference));
  const below = surfaceBelow ? bottom.filter(isThrough) : bottom;
  return (
    nowhere.reduce((sum, body) => sum + 3 * areaOf(body), 0) +
    below.reduce((sum, body) => sum + areaOf(body) * (isThrough(body) ? 2 : 1), 0)
  );
}

function placeOn(entry: Entry, plan: BoardPlan, { clearance, order, surfaceBelow }: Trial): PlacedBoard {
  const sides = bodiesBySide(entry);
  const top: PlacedBody[] = [
    ...standCells(sides.cells, plan.cells),
    ...standAcross(sides.across, plan, order),
    ...standAtEdge(sides.secondary, plan),
  ];
  const bottom: PlacedBody[] = [];
  const regions: readonly [readonly Body[], Area | null][] = [
    [sides.primary, plan.primary],
    [sides.secondary.filter((body) => !isPort(body)), plan.secondary],
  ];
  for (const [bodies, region] of regions) {
    if (region === null) continue;
    const across = middles(bodies, region);
    for (const body of [...bodies.filter(isThrough).sort(largestFirst), ...bodies.filter((each) => !isThrough(each))]) {
      const anchor = anchorOf(body, top, region, across.get(body.reference) ?? region.x);
      const below = surfaceBelow && !isThrough(body);
      const placed = below ? null : stand(body, region, top, clearance, anchor);
      if (placed !== null) top.push(placed);
      else {
        const under = stand(body, region, bottom, Math.max(clearance, 1), anchor);
        if (under !== null) bottom.push(under);
      }
    }
  }
  return { plan, top, bottom };
}

const areaOf = ({ shape }: Body): number => (shape.length + 1) * (shape.width + LETTERING + 1);
const largestFirst = (one: Body, other: Body): number => areaOf(other) - areaOf(one);

/** Where across the region each part would stand if all stood in the order of the power's way. */
function middles(bodies: readonly Body[], region: Area): ReadonlyMap<string, number> {
  const total = bodies.reduce((sum, body) => sum + areaOf(body), 0);
  let before = 0;
  return new Map(
    bodies.map((body) => {
      const middle = region.x + (region.width * (before + areaOf(body) / 2)) / total;
      before += areaOf(body);
      return [body.reference, middle];
    }),
  );
}

interface Anchor {
  readonly x: number;
  readonly y: number;
  /** How much a millimetre down counts beside one across. */
  readonly down: number;
}

/** Tall parts keep their place across and fill from the edges; what is soldered to a surface goes near its own stage. */
function anchorOf(body: Body, others: readonly PlacedBody[], region: Area, across: number): Anchor {
  if (isThrough(body)) return { x: across, y: region.y, down: 0.12 };
  return { ...middleOfStage(body, others, region), down: 0.6 };
}

const isThrough = (body: Body): boolean => body.shape.mount === 'through';
const isPort = (body: Body): boolean => body.shape.kind === 'USB-C' || body.shape.kind === 'USB-A';

function standCells(cells: readonly Body[], area: Area | null): readonly PlacedBody[] {
  if (area === null) return [];
  const pitch = area.height / cells.length;
  return cells.map((body, index) => {
    const { length, width } = body.shape;
    return { ...body, turned: false, area: { x: area.x, y: area.y + pitch * (index + 0.5) - width / 2, width: length, height: width } };
  });
}

/** Ports stand at the right edge of the board, evenly, a millimetre over it. */
function standAtEdge(bodies: readonly Body[], plan: BoardPlan): readonly PlacedBody[] {
  const ports = bodies.filter(isPort);
  const board = plan.boards.at(-1);
  if (board === undefined) return [];
  const free = board.height - ports.reduce((sum, { shape }) => sum + shape.width, 0);
  let y = board.y + free / (ports.length + 1);
  return ports.map((body) => {
    const { length, width } = body.shape;
    const area = { x: board.x + board.width - length + 1, y, width: length, height: width };
    y += width + free / (ports.length + 1);
    return { ...body, turned: false, area };
  });
}

/** Transformer, Y capacitor and optocoupler bridge the insulation, one below the other. */
function standAcross(bodies: readonly Body[], plan: BoardPlan, ranks: Trial['order']): readonly PlacedBody[] {
  const { barrier } = plan;
  if (barrier === null) return [];
  const sorted = [...bodies].sort((one, other) => rankAcross(one, ranks) - rankAcross(other, ranks));
  const bare = sorted.reduce((sum, { shape }) => sum + shape.width, 0);
  const lettering = Math.min(LETTERING, (barrier.board.height - 1 - bare) / sorted.length);
  const free = barrier.board.height - bare - lettering * sorted.length;
  let y = barrier.board.y + free / (sorted.length + 1);
  return sorted.map((body) => {
    const { length, width } = body.shape;
    const area = { x: Math.max(barrier.x - length / 2, barrier.board.x + 0.6), y: y + lettering, width: length, height: width };
    y += body.shape.width + lettering + free / (sorted.length + 1);
    return { ...body, turned: false, area };
  });
}

const rankAcross = (body: Body, [transformer, capacitor, coupler]: Trial['order']): number =>
  body.part.role === 'transformer' ? transformer : body.part.role === 'y-capacitor' ? capacitor : coupler;

/** The free place nearest to the anchor, in either turn. */
function stand(body: Body, region: Area, others: readonly PlacedBody[], clearance: number, anchor: Anchor): PlacedBody | null {
  let best: { placed: PlacedBody; cost: number } | null = null;
  for (const turned of [false, true]) {
    const { length, width } = body.shape;
    const size = turned ? { width, height: length } : { width: length, height: width };
    const taken = others.map(({ area }) => cornersTaken(area, size, clearance));
    for (let x = region.x; x + size.width <= region.x + region.width; x += STEP) {
      const across = x + size.width / 2 - anchor.x;
      for (let y = region.y + LETTERING; y + size.height <= region.y + region.height; y += STEP) {
        const down = anchor.down * (y + size.height / 2 - anchor.y);
        const cost = Math.sqrt(across * across + down * down) + (turned ? 0.2 : 0);
        if (best !== null && cost >= best.cost) continue;
        if (!taken.some((zone) => x > zone.left && x < zone.right && y > zone.top && y < zone.bottom)) {
          best = { placed: { ...body, area: { x, y, ...size }, turned }, cost };
        }
      }
    }
  }
  return best?.placed ?? null;
}

/** Where the upper left corner of a body of that size may not be, so that neither covers the other or its reference. */
function cornersTaken(other: Area, size: { width: number; height: number }, clearance: number): Zone {
  return {
    left: other.x - size.width - clearance,
    right: other.x + other.width + clearance,
    top: other.y - size.height - LETTERING - clearance / 2,
    bottom: other.y + other.height + LETTERING + clearance / 2,
  };
}

function middleOfStage(body: Body, others: readonly PlacedBody[], region: Area): { x: number; y: number } {
  const same = others.filter(({ part, area }) => part.stage === body.part.stage && area.x >= region.x && area.x < region.x + region.width);
  if (same.length === 0) return { x: region.x + region.width / 2, y: region.y + region.height / 2 };
  const mean = (of: (area: Area) => number): number => same.reduce((sum, { area }) => sum + of(area), 0) / same.length;
  return { x: mean((area) => area.x + area.width / 2), y: mean((area) => area.y + area.height / 2) };
}
