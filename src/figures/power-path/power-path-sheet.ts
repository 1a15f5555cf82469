import { figure } from '../markup.ts';
import { bandsAcross } from './bands-across.ts';
import { barrierLines, blockDrawing, outletLabel, roomAbove, sourceSymbol } from './blocks-across.ts';
import { lossAxis } from './loss-axis.ts';
import type { PathFigureInput } from './path-links.ts';
import { pathNodes, type PathNode } from './path-nodes.ts';
import { pathSentence } from './path-words.ts';
import { blockHeight, placeAcross, SHEET, type Placed } from './place-across.ts';

/** The power path across a sheet: band as high as the power, blocks across it, the losses hanging from an axis below. */
export function powerPathSheet(input: PathFigureInput): string {
  const { path } = input;
  const nodes = pathNodes(path);
  const scale = SHEET.band / Math.max(nodes.total, 1e-9);
  const places = placeAcross(nodes.roots, scale, nodes.depth, path.source.kind !== 'battery');
  const tops = [...places.values()].map((place) => place.y - blockHeight(place.node, scale) / 2 - roomAbove(place));
  const shift = 4 - Math.min(...tops);
  const placed = new Map([...places].map(([node, place]) => [node, { ...place, y: place.y + shift }]));
  const bottom = Math.max(...[...placed.values()].map(({ node, y }) => y + blockHeight(node, scale) / 2 + (node.block === null ? 0 : 40)));
  const first = firstOf(nodes.roots, placed);
  const bands = bandsAcross(nodes.roots, placed, scale, path, first);
  const drawn = [...placed.values()];
  const losses = lossAxis(path, placed, scale, bottom + 22);
  return figure({
    hasLinks: true,
    id: input.id,
    className: 'fig path-fig path-across',
    width: SHEET.width,
    height: bottom + 22 + losses.height,
    title: `Power path of ${input.name}`,
    description: pathSentence(path),
    body:
      sourceSymbol(path, first) +
      bands +
      drawn.map((place) => (place.node.block === null ? '' : blockDrawing(place, place.node.block, scale, input))).join('') +
      barrierLines(drawn, scale) +
      drawn.map((place) => outletLabel(place)).join('') +
      losses.svg,
  });
}

function firstOf(roots: readonly PathNode[], placed: ReadonlyMap<PathNode, Placed>): number {
  const rows = roots.flatMap((root) => placed.get(root)?.y ?? []);
  return rows.reduce((sum, y) => sum + y, 0) / Math.max(1, rows.length);
}
