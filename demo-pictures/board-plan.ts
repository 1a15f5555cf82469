import type { Entry, Part } from '../src/entry/entry.ts';
import { shapeOf, type PartShape } from './part-shape.ts';

/** A rectangle in millimetres, from the upper left of the picture's plan. */
export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** One reference of a part with its look, before it has a place. */
export interface Body {
  readonly reference: string;
  readonly part: Part;
  readonly shape: PartShape;
}

/** Boards of a device laid flat, and where on them the parts of either side of the insulation may stand. */
export interface BoardPlan {
  readonly boards: readonly Area[];
  readonly primary: Area | null;
  readonly secondary: Area;
  /** Middle of the insulation and the width of the slot in it; null without one. */
  readonly barrier: { readonly x: number; readonly board: Area; readonly slot: number; readonly gap: number } | null;
  /** Where the cells of a pack lie beside the board. */
  readonly cells: Area | null;
}

const WALL = 2.2;
const MARGIN = 1.2;
/** Between two boards that were folded apart. */
const FOLD = 5;

/** Parts of an entry that are seen on its boards, by the side of the insulation, each in the order of the power's way. */
export interface SidedBodies {
  readonly primary: readonly Body[];
  readonly across: readonly Body[];
  readonly secondary: readonly Body[];
  readonly cells: readonly Body[];
}

/** Roles behind the transformer of a converter that still belong to its mains side. */
const STAYS_PRIMARY = /auxiliary|supply|clamp|digital-isolator|primary-switch|resonant/u;

export function bodiesBySide(entry: Entry): SidedBodies {
  const order = new Map(entry.stages.map(({ id }, index) => [id, index]));
  const sorted = [...entry.parts].sort((one, other) => (order.get(one.stage) ?? 99) - (order.get(other.stage) ?? 99));
  const isolated = entry.parts.some(({ role }) => role === 'transformer');
  let behind = !isolated;
  const sides = { primary: [] as Body[], across: [] as Body[], secondary: [] as Body[], cells: [] as Body[] };
  for (const part of sorted) {
    const shape = shapeOf(part);
    if (shape === null) continue;
    const bodies = part.references.map((reference) => ({ reference, part, shape }));
    if (part.role === 'transformer' || part.role === 'optocoupler' || part.role === 'y-capacitor') sides.across.push(...bodies);
    else if (part.role === 'cell') sides.cells.push(...bodies);
    else if (!behind || (STAYS_PRIMARY.test(part.role) && isolated)) sides.primary.push(...bodies);
    else sides.secondary.push(...bodies);
    behind ||= part.role === 'transformer';
  }
  return sides;
}

/**
 * Boards within the body of the entry. A small wall charger has two boards, one over the other; opened like
 * a book, the second one lies to the right and carries the insulation.
 * `share`: how far across the first board the insulation stands, 0 to 1.
 */
export function boardPlan(entry: Entry, share: number): BoardPlan {
  const [length, width] = edges(entry);
  const slot = Math.max(1, ...entry.insulation.map((place) => (place.slot?.quantity.nominal ?? 0) * 1e3));
  const creepage = Math.max(
    6,
    ...entry.insulation.filter((place) => place.kind === 'reinforced').map((place) => (place.creepage?.quantity.nominal ?? 0) * 1e3),
  );
  if (entry.stages.some(({ kind }) => kind === 'battery-pack')) return packPlan(length, width);
  const first: Area = { x: 0, y: 0, width: length - 2 * WALL, height: width - 2 * WALL };
  if (!entry.parts.some(({ role }) => role === 'transformer')) {
    return { boards: [first], primary: null, secondary: inset(first, 0, first.width), barrier: null, cells: null };
  }
  const folded = length * width < 3000;
  const second: Area = { ...first, x: first.width + FOLD };
  const board = folded ? second : first;
  const x = folded ? second.x + Math.min(14, 0.3 * second.width) : first.width * share;
  return {
    boards: folded ? [first, second] : [first],
    primary: folded ? inset(first, 0, first.width) : inset(first, 0, x - creepage / 2),
    secondary: inset(board, x + creepage / 2 - board.x, board.width),
    barrier: { x, board, slot, gap: creepage },
    cells: null,
  };
}

function packPlan(length: number, width: number): BoardPlan {
  const cells: Area = { x: 0, y: 0, width: 70, height: width - 2 * WALL };
  const board: Area = { x: 72, y: 0, width: length - 2 * WALL - 72, height: width - 2 * WALL };
  return { boards: [board], primary: null, secondary: inset(board, 0, board.width), barrier: null, cells };
}

/** Part of a board from one place to another across, without its edge. */
function inset(board: Area, from: number, to: number): Area {
  const x = board.x + Math.max(from, MARGIN);
  return { x, y: board.y + MARGIN, width: board.x + Math.min(to, board.width - MARGIN) - x, height: board.height - 2 * MARGIN };
}

/** Length, width and height of a body in millimetres; a cylinder is as wide as it is high. @throws where an entry states no size. */
export function edges(entry: Entry): readonly [number, number, number] {
  const size = entry.body.size?.size;
  if (size === undefined) throw new Error(`${entry.slug} states no size`);
  const mm = (metres: { readonly nominal: number }): number => metres.nominal * 1e3;
  if (size.shape === 'cylinder') return [mm(size.height) - 14, mm(size.diameter), mm(size.diameter)];
  return [mm(size.edges[0]), mm(size.edges[1]), mm(size.edges[2])];
}
