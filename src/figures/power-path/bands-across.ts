import type { PowerPath } from '../../derived/power-path/power-path.ts';
import { isMissing } from '../../values/value.ts';
import { escapeText, px } from '../markup.ts';
import { bandPiece, type Placing } from './band.ts';
import { everyNode, type PathNode } from './path-nodes.ts';
import { watts } from './path-words.ts';
import { busPlace, nearestEdge, SHEET, type Placed } from './place-across.ts';

const ALONG: Placing = (along, across) => [along, across];

/** The whole band, from the source to the arrows. */
export function bandsAcross(
  roots: readonly PathNode[],
  placed: ReadonlyMap<PathNode, Placed>,
  scale: number,
  path: PowerPath,
  sourceY: number,
): string {
  const starts = path.source.kind === 'battery' ? '' : fan({ node: null, x: SHEET.start, y: sourceY }, roots, placed, scale, path);
  const inner = everyNode(roots).map((node) => {
    const place = placed.get(node);
    return place === undefined || node.block === null
      ? ''
      : fan({ node, x: place.x + SHEET.block / 2, y: place.y }, node.children, placed, scale, path);
  });
  return starts + inner.join('');
}

/** Where a stretch of the band starts: a block, or the source (null). */
interface Start {
  readonly node: PathNode | null;
  readonly x: number;
  readonly y: number;
}

/** The band from one block, or the source, to all that it feeds; where it divides, a bus line stands across it. */
function fan(start: Start, children: readonly PathNode[], placed: ReadonlyMap<PathNode, Placed>, scale: number, path: PowerPath): string {
  const { node, x, y } = start;
  const side = node === null ? sideAtSource(children) : node.block?.side === 'primary' ? 'primary' : 'secondary';
  const next = children.flatMap((child) => placed.get(child) ?? []);
  const divides = next.length > 1;
  const busX = divides ? busPlace(x, next) : x;
  const whole = children.reduce((sum, child) => sum + child.widthIn, 0) * scale;
  const before = node === null ? whole : node.widthOut * scale;
  const unknown = isMissing(path.input);
  const lead = {
    from: x,
    to: busX,
    centreFrom: y,
    centreTo: y,
    widthFrom: before,
    widthTo: before,
    side,
    isGuessed: unknown,
    isArrow: false,
  } as const;
  let offset = y - whole / 2;
  const pieces = next.map((to) => {
    const width = to.node.widthIn * scale;
    const centreFrom = divides ? offset + width / 2 : to.y;
    offset += width;
    const end = to.x - (to.node.block === null ? 0 : SHEET.block / 2);
    const isGuessed = to.node.isGuessed && (divides || unknown);
    const ends = { from: busX, to: end, centreFrom, centreTo: to.y, widthFrom: width, widthTo: width };
    const number = numberOn(to.node, divides ? end - 32 : (busX + end) / 2, to.y, width, path);
    return width === 0 ? '' : bandPiece({ ...ends, side, isGuessed, isArrow: to.node.block === null }, ALONG) + number;
  });
  const half = Math.max(before, whole) / 2;
  const bus = divides ? `<path class="bus-line" d="M${px(busX)} ${px(y - half - 8)}V${px(y + half + 8)}"/>` : '';
  const label = busLabel(node, divides ? x + (busX - x) * 0.55 : (x + nearestEdge(next)) / 2, y, half);
  return (divides ? bandPiece(lead, ALONG) : '') + pieces.join('') + bus + label;
}

function sideAtSource(children: readonly PathNode[]): 'primary' | 'secondary' {
  return children.some(({ block }) => block?.side === 'primary' || block?.side === 'barrier') ? 'primary' : 'secondary';
}

/** The power in the band in a cleared box, above it where it is too thin; only where it is known at this very place. */
function numberOn(child: PathNode, x: number, y: number, width: number, path: PowerPath): string {
  const text = knownInput(child, path);
  if (text === null) return '';
  const half = text.length * 3.9 + 4;
  const centre = width >= 24 ? y : y - width / 2 - 11;
  return `<rect class="clear" x="${px(x - half)}" y="${px(centre - 10)}" width="${px(half * 2)}" height="20"/><text class="num mid" x="${px(x)}" y="${px(centre + 5)}">${text}</text>`;
}

function knownInput({ block }: PathNode, path: PowerPath): string | null {
  if (block === null || isMissing(block.input)) return null;
  return `${path.basis === 'by efficiency' ? '≈ ' : ''}${watts(block.input)}`;
}

function busLabel(node: PathNode | null, x: number, y: number, half: number): string {
  const bus = node?.block?.bus ?? null;
  if (bus === null) return '';
  const top = y - half;
  return `<path class="thin" d="M${px(x)} ${px(top)}v-7"/><text class="mid mono-note" x="${px(x)}" y="${px(top - 11)}">${escapeText(bus)} bus</text>`;
}
