import type { PathBlock, PathOutlet, PowerPath } from '../../derived/power-path/power-path.ts';
import { isMissing } from '../../values/value.ts';

/** A stage or an outlet in the tree that is drawn. */
export interface PathNode {
  readonly block: PathBlock | null;
  readonly outlet: PathOutlet | null;
  readonly depth: number;
  readonly children: readonly PathNode[];
  /** Width of the band into it and out of it, in watts, or in even parts where no power is known. */
  readonly widthIn: number;
  readonly widthOut: number;
  /** Whether the power into it is not known and the width only drawn even. */
  readonly isGuessed: boolean;
}

/** The tree of a path with its widths; `total` is the widest place. */
export interface PathNodes {
  readonly roots: readonly PathNode[];
  readonly total: number;
  readonly depth: number;
  /** Stages and ports where the way divides. */
  readonly hasSplit: boolean;
}

/** Widths for drawing: powers where any is known, else an even share for each outlet. */
export function pathNodes(path: PowerPath): PathNodes {
  const known = path.outlets.some(({ power }) => !isMissing(power));
  const even = 1 / Math.max(1, path.outlets.length);
  const outletWidth = ({ power }: PathOutlet): number => (known ? (isMissing(power) ? 0 : power.nominal) : even);
  const build = (from: string | null, depth: number): readonly PathNode[] => [
    ...path.blocks.filter((block) => block.from === from).map((block) => blockNode(path, block, depth, build)),
    ...path.outlets
      .filter((outlet) => outlet.from === from)
      .map((outlet) => ({
        block: null,
        outlet,
        depth,
        children: [],
        widthIn: outletWidth(outlet),
        widthOut: 0,
        isGuessed: isMissing(outlet.power),
      })),
  ];
  const roots = build(null, 0);
  return {
    roots,
    total: roots.reduce((sum, root) => sum + root.widthIn, 0),
    depth: Math.max(0, ...roots.map(deepest)),
    hasSplit: everyNode(roots).some(({ children }) => children.length > 1) || roots.length > 1,
  };
}

function blockNode(
  path: PowerPath,
  block: PathBlock,
  depth: number,
  build: (from: string | null, depth: number) => readonly PathNode[],
): PathNode {
  const children = build(block.stage, depth + 1);
  const behind = children.reduce((sum, child) => sum + child.widthIn, 0);
  const isTrunk = isBeforeSplit(path, block);
  const whole = isMissing(path.input) ? behind : path.input.nominal;
  const lastOfTrunk = isTrunk && !children.some((child) => child.block !== null && isBeforeSplit(path, child.block));
  const widthIn = isTrunk ? whole : isMissing(block.input) ? behind : block.input.nominal;
  const widthOut = !isTrunk || (lastOfTrunk && children.length < 2) ? behind : whole;
  return { block, outlet: null, depth, children, widthIn, widthOut, isGuessed: isMissing(isTrunk ? path.input : block.output) };
}

/** Whether all the power passes a block: nothing stands beside it or beside any block before it. */
function isBeforeSplit(path: PowerPath, block: PathBlock): boolean {
  const beside = [...path.blocks.filter(({ from }) => from === block.from), ...path.outlets.filter(({ from }) => from === block.from)];
  if (beside.length !== 1) return false;
  const before = path.blocks.find(({ stage }) => stage === block.from);
  return before === undefined || isBeforeSplit(path, before);
}

/** All nodes, each before its children. */
export function everyNode(roots: readonly PathNode[]): readonly PathNode[] {
  return roots.flatMap((root) => [root, ...everyNode(root.children)]);
}

function deepest(node: PathNode): number {
  return Math.max(node.depth, ...node.children.map(deepest));
}
