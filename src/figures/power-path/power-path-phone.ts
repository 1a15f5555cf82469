import type { PathBlock, PowerPath } from '../../derived/power-path/power-path.ts';
import { isMissing } from '../../values/value.ts';
import { escapeText, figure, px } from '../markup.ts';
import { bandPiece, type Placing } from './band.ts';
import { conductionWatts, type DrawnLoss, drawnLosses } from './losses.ts';
import type { PathFigureInput } from './path-links.ts';
import { everyNode, pathNodes, type PathNode } from './path-nodes.ts';
import { blockSentence, inputWatts, namedParts, outletName, pathSentence, stageName, watts } from './path-words.ts';

const WIDTH = 320;
const TRUNK = 66;
const BAND = 78;
const BLOCK = 40;
/** Room from one block to the next, and where the way divides. */
const GAP = { next: 34, divide: 92 } as const;
const LOSS_ROOM = 90;
/** What open bars and "≥" mean, in the lines that fit. */
const KEY: readonly string[] = ['Open bar and ≥: conduction alone in the named', 'parts, worked out; more is lost there.'];

interface Down {
  readonly node: PathNode;
  readonly x: number;
  readonly y: number;
}

const DOWN: Placing = (along, across) => [across, along];

/** The power path running downwards, for a phone and for print: names and losses at the right of the band. */
export function powerPathPhone(input: PathFigureInput): string {
  const { path } = input;
  const nodes = pathNodes(path);
  const scale = BAND / Math.max(nodes.total, 1e-9);
  const placed = placeDown(nodes.roots, path);
  const places = [...placed.values()];
  const losses = new Map(drawnLosses(path).flatMap((loss) => (loss.stage === null ? [] : [[loss.stage, loss] as const])));
  const largest = Math.max(0, ...[...losses.values()].map(({ watts: lost }) => lost));
  const key = [...losses.values()].some(({ conduction }) => conduction !== null) ? KEY : [];
  const end = Math.max(...places.map(({ node, y }) => y + (node.block === null ? 66 : BLOCK)));
  const bottom = end + key.length * 17 + (key.length === 0 ? 0 : 12);
  const body =
    sourceLine(path) +
    bands(nodes.roots, placed, scale, path) +
    places
      .map((place) => (place.node.block === null ? outlet(place, places) : block(place, place.node.block, scale, input, losses, largest)))
      .join('') +
    barriers(places) +
    key.map((words, index) => `<text x="0" y="${px(end + 20 + index * 17)}">${words}</text>`).join('');
  return figure({
    hasLinks: true,
    id: input.id,
    className: 'fig path-fig path-down',
    width: WIDTH,
    height: bottom,
    title: `Power path of ${input.name}, downwards`,
    description: pathSentence(path),
    body,
  });
}

/** Trunk at the left, outlets spread over the width, each stage above the middle of what it feeds. */
function placeDown(roots: readonly PathNode[], path: PowerPath): ReadonlyMap<PathNode, Down> {
  const leaves = everyNode(roots).filter(({ children }) => children.length === 0);
  const splits = everyNode(roots).some(({ children }) => children.length > 1) || roots.length > 1;
  const step = WIDTH / Math.max(1, leaves.length);
  const start = path.source.kind === 'battery' ? 10 : 66;
  const placed = new Map<PathNode, Down>();
  const place = (node: PathNode, y: number, isTrunk: boolean): number => {
    const middle = y + BLOCK / 2;
    const next = y + (node.block === null ? 0 : BLOCK) + (node.children.length > 1 ? GAP.divide : GAP.next);
    const columns = node.children.map((child) => place(child, next, isTrunk && node.children.length === 1));
    const spread = columns.length === 0 ? step * (leaves.indexOf(node) + 0.5) : ((columns[0] ?? 0) + (columns.at(-1) ?? 0)) / 2;
    const x = isTrunk ? TRUNK : splits ? spread : TRUNK;
    placed.set(node, { node, x, y: node.block === null ? y : middle });
    return x;
  };
  const isOne = roots.length === 1;
  for (const root of roots) place(root, start + (isOne ? 14 : GAP.divide), isOne);
  return placed;
}

function bands(roots: readonly PathNode[], placed: ReadonlyMap<PathNode, Down>, scale: number, path: PowerPath): string {
  const inner = everyNode(roots).map((node) => {
    const place = placed.get(node);
    return place === undefined || node.block === null
      ? ''
      : fan({ node, x: place.x, y: place.y + BLOCK / 2 }, node.children, placed, scale, path);
  });
  const x = roots.length === 1 ? TRUNK : WIDTH / 2;
  return (path.source.kind === 'battery' ? '' : fan({ node: null, x, y: 62 }, roots, placed, scale, path)) + inner.join('');
}

interface Start {
  readonly node: PathNode | null;
  readonly x: number;
  readonly y: number;
}

function fan(
  { node, x, y }: Start,
  children: readonly PathNode[],
  placed: ReadonlyMap<PathNode, Down>,
  scale: number,
  path: PowerPath,
): string {
  const side = isPrimary(node, children) ? 'primary' : 'secondary';
  const next = children.flatMap((child) => placed.get(child) ?? []);
  const divides = next.length > 1;
  const bus = divides ? y + 24 : y;
  const whole = children.reduce((sum, child) => sum + child.widthIn, 0) * scale;
  const trunk = node === null ? whole : node.widthOut * scale;
  const unknown = isMissing(path.input);
  const lead = {
    from: y,
    to: bus,
    centreFrom: x,
    centreTo: x,
    widthFrom: trunk,
    widthTo: trunk,
    side,
    isGuessed: unknown,
    isArrow: false,
  } as const;
  let offset = x - whole / 2;
  const pieces = next.map((to) => {
    const width = to.node.widthIn * scale;
    const centreFrom = divides ? offset + width / 2 : to.x;
    offset += width;
    const end = to.y - (to.node.block === null ? 0 : BLOCK / 2);
    const ends = { from: bus, to: end, centreFrom, centreTo: to.x, widthFrom: width, widthTo: width };
    const isGuessed = to.node.isGuessed && (divides || unknown);
    return width === 0 ? '' : bandPiece({ ...ends, side, isGuessed, isArrow: to.node.block === null }, DOWN);
  });
  const line = divides ? busLine(x, bus, Math.max(trunk, whole) / 2 + 8, node?.block?.bus ?? null) : '';
  return (divides ? bandPiece(lead, DOWN) : '') + pieces.join('') + line;
}

function isPrimary(node: PathNode | null, children: readonly PathNode[]): boolean {
  if (node !== null) return node.block?.side === 'primary';
  return children.some(({ block: first }) => first?.side === 'primary' || first?.side === 'barrier');
}

function busLine(x: number, y: number, reach: number, voltage: string | null): string {
  const label =
    voltage === null ? '' : `<text class="mono-note" x="${px(x + reach + 8)}" y="${px(y + 4)}">${escapeText(voltage)} bus</text>`;
  return `<path class="bus-line" d="M${px(x - reach)} ${px(y)}H${px(x + reach)}"/>${label}`;
}

function block(
  place: Down,
  drawn: PathBlock,
  scale: number,
  input: PathFigureInput,
  losses: ReadonlyMap<string, DrawnLoss>,
  largest: number,
): string {
  const { node, x, y } = place;
  const width = Math.max(48, Math.max(node.widthIn, node.widthOut) * scale + 16);
  const shape =
    `<a href="${escapeText(input.familyLink)}" aria-label="${escapeText(blockSentence(drawn))}"><rect class="block" x="${px(x - width / 2)}" y="${px(y - BLOCK / 2)}" width="${px(width)}" height="${BLOCK}"/>` +
    `<svg class="g" x="${px(x - 17)}" y="${px(y - 17)}" width="34" height="34"><use href="#s-${escapeText(drawn.kind)}"/></svg></a>`;
  const lost = losses.get(drawn.stage);
  if (x !== TRUNK) {
    const least = lost === undefined ? '' : lost.isWhole ? `−${lost.watts.toFixed(1)}` : `≥${conductionWatts(lost.watts)}`;
    return shape + (least === '' ? '' : `<text class="mono-note" x="${px(x + width / 2 + 4)}" y="${px(y + 5)}">${least}</text>`);
  }
  const left = x + width / 2 + 12;
  const bar = lost === undefined ? '' : lossBar(lost, y, LOSS_ROOM / largest);
  return `${shape}<text class="stage-name" x="${px(left)}" y="${px(y - 3)}">${escapeText(stageName(drawn))}</text>${partNames(drawn, left, y + 15, input)}${bar}`;
}

/** Number and bar at the right edge; the open part is conduction. */
function lossBar({ watts: lost, conduction, isWhole }: DrawnLoss, y: number, perWatt: number): string {
  const bar = (className: string, width: number, height: number): string =>
    `<rect class="${className}" x="${px(WIDTH - 1 - width)}" y="${px(y + 6)}" width="${px(width)}" height="${height}"/>`;
  const number = isWhole ? lost.toFixed(1) : `≥ ${conductionWatts(lost)}`;
  const open = conduction === null ? '' : bar('bo', Math.max(1, Math.min(conduction, lost) * perWatt), 5);
  return `<text class="num end" x="${WIDTH}" y="${px(y - 2)}">${number}</text>${isWhole ? bar('b', lost * perWatt, 5) : ''}${open}`;
}

function partNames(drawn: PathBlock, x: number, y: number, { partLink }: PathFigureInput): string {
  const { references, more } = namedParts(drawn.parts, 4);
  const items = references.map((reference) => `<a href="${escapeText(partLink(reference))}">${escapeText(reference)}</a>`);
  const cells = [...items, ...(more === 0 ? [] : [`+${more}`])];
  return cells.length === 0 ? '' : `<text class="part-names" x="${px(x)}" y="${px(y)}">${cells.join(' ')}</text>`;
}

/** The barrier runs across the sheet just above the block whose transformer carries it. */
function barriers(placed: readonly Down[]): string {
  const [first] = placed.filter(({ node }) => node.block?.side === 'barrier');
  if (first === undefined) return '';
  const y = first.y - BLOCK / 2 - GAP.next / 2;
  return `<path class="barrier" d="M0 ${px(y)}H${WIDTH}"/><text class="end" x="${WIDTH}" y="${px(y - 5)}">primary</text><text class="end" x="${WIDTH}" y="${px(y + 15)}">secondary</text>`;
}

function outlet({ node, x, y }: Down, all: readonly Down[]): string {
  if (node.outlet === null) return '';
  const { outlet: leaving } = node;
  const several = all.filter(({ node: other }) => other.outlet !== null).length;
  const power = isMissing(leaving.power) ? '–' : `${watts(leaving.power)}${several > 5 ? '' : ' W'}`;
  const shared = leaving.ports.length > 1 ? `<text class="mid mono-note" x="${px(x)}" y="${px(y + 62)}">shared</text>` : '';
  const note =
    leaving.note !== null && several < 4 && shared === ''
      ? `<text class="mid mono-note" x="${px(x)}" y="${px(y + 62)}">${escapeText(leaving.note)}</text>`
      : '';
  return `<text class="num strong mid" x="${px(x)}" y="${px(y + 29)}">${escapeText(outletName(leaving))}</text><text class="num mid" x="${px(x)}" y="${px(y + 46)}">${power}</text>${shared}${note}`;
}

function sourceLine(path: PowerPath): string {
  if (path.source.kind === 'battery') return '';
  const wave =
    path.source.kind === 'mains'
      ? '<path class="med" d="M56 26q5-11 10 0t10 0"/>'
      : '<path class="med" d="M57 23h18"/><path class="dash" d="M57 30h18"/>';
  const line = path.source.line === null ? '' : ` ${path.source.line}`;
  const power = isMissing(path.input) ? '' : `<text class="num end" x="${WIDTH}" y="31">${inputWatts(path)} W</text>`;
  return `<circle class="med" cx="66" cy="26" r="20"/>${wave}<text x="98" y="31">${escapeText(path.source.name + line)}</text>${power}`;
}
