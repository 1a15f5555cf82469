import { everyNode, type PathNode } from './path-nodes.ts';

/** Measures of the drawing across a sheet, in pixels. */
export const SHEET = { width: 1146, start: 84, tips: 978, block: 42, band: 108 } as const;

/** A node with the middle of its block, or the place of its arrow. */
export interface Placed {
  readonly node: PathNode;
  readonly x: number;
  readonly y: number;
}

/** Columns by depth, wider where the way divides; rows by outlet, each stage in the middle of what it feeds. */
export function placeAcross(roots: readonly PathNode[], scale: number, depth: number, hasSource: boolean): Map<PathNode, Placed> {
  const all = everyNode(roots);
  const weight = (at: number): number => {
    if (at === 0) return roots.length > 1 ? 1.6 : hasSource ? 0.9 : 0;
    return all.some((node) => node.depth === at - 1 && node.children.length > 1) ? 2.1 : 1;
  };
  const weights = Array.from({ length: depth + 1 }, (_, at) => weight(at));
  const unit = (SHEET.tips - SHEET.start - depth * SHEET.block) / weights.reduce((sum, one) => sum + one, 0);
  const columns = weights.map(
    (_, at) => SHEET.start + weights.slice(0, at + 1).reduce((sum, one) => sum + one, 0) * unit + at * SHEET.block,
  );
  const places = new Map<PathNode, Placed>();
  let next = 0;
  const place = (node: PathNode): number => {
    const x = node.block === null ? SHEET.tips : (columns[node.depth] ?? SHEET.tips) + SHEET.block / 2;
    if (node.children.length === 0) {
      const height = slotHeight(node, scale);
      const y = next + height / 2;
      next += height;
      places.set(node, { node, x, y });
      return y;
    }
    const floor = next;
    const rows = node.children.map(place);
    const y = ((rows[0] ?? 0) + (rows.at(-1) ?? 0)) / 2;
    // A branch of one outlet still needs the room of its own block.
    next = Math.max(next, floor + slotHeight(node, scale));
    places.set(node, { node, x, y });
    return y;
  };
  for (const root of roots) place(root);
  return places;
}

/** Height of a stage's block: the band and what it stands over on both sides. */
export function blockHeight(node: PathNode, scale: number): number {
  return node.block === null ? Math.max(40, node.widthIn * scale) : Math.max(50, Math.max(node.widthIn, node.widthOut) * scale + 16);
}

function slotHeight(node: PathNode, scale: number): number {
  return blockHeight(node, scale) + (node.block === null ? 78 : 66);
}

/** Place of the bus line behind a block, or behind the source, that feeds several. */
export function busPlace(x: number, children: readonly Placed[]): number {
  return x + Math.max(46, (nearestEdge(children) - x) * 0.42);
}

/** Where the first of several begins. */
export function nearestEdge(children: readonly Placed[]): number {
  return Math.min(...children.map(({ node, x }) => x - (node.block === null ? 0 : SHEET.block / 2)));
}
