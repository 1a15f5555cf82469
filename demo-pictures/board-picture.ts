import type { Entry } from '../src/entry/entry.ts';
import type { Area, BoardPlan } from './board-plan.ts';
import { drawBody } from './draw-body.ts';
import { block, letter, mm, type Lettering } from './lettering.ts';
import { framed, type DrawnPicture } from './picture.ts';
import type { PlacedBoard, PlacedBody } from './place-parts.ts';

/** Boards from above: mask, copper under it, silkscreen, slot and parts with their shadows, all from the entry. */
export function boardTop(entry: Entry, placed: PlacedBoard, lettering: Lettering): DrawnPicture {
  const content =
    boards(placed.plan, placed.top) +
    copper(entry, placed.plan.barrier?.x ?? null, placed.top) +
    barrier(placed.plan, placed.plan.barrier?.x ?? 0) +
    parts(placed.top, lettering);
  return framed(
    { extent: extentOf(placed), shadows: shadowsOf(placed.top), ground: groundOf(placed.plan), content, bodies: bodiesOf(placed.top) },
    lettering,
  );
}

/** The other side, turned over about its upright axis: what is soldered to the surface, and the joints of what stands on top. */
export function boardBottom(entry: Entry, placed: PlacedBoard, lettering: Lettering): DrawnPicture {
  const right = Math.max(...placed.plan.boards.map((board) => board.x + board.width));
  const mirror = (area: Area): Area => ({ ...area, x: right - area.x - area.width });
  const plan: BoardPlan = { ...placed.plan, boards: placed.plan.boards.map(mirror) };
  const bottom = placed.bottom.map((body) => ({ ...body, area: mirror(body.area) }));
  const joints = placed.top
    .filter(({ shape }) => shape.mount === 'through')
    .map((body) => solderJoints(mirror(body.area), plan.boards, bottom));
  const middleLine = placed.plan.barrier === null ? null : right - placed.plan.barrier.x;
  const content =
    boards(plan, bottom) + copper(entry, middleLine, bottom) + barrier(plan, middleLine ?? 0) + joints.join('') + parts(bottom, lettering);
  return framed(
    { extent: extentOf({ plan, top: bottom }), shadows: shadowsOf(bottom), ground: groundOf(plan), content, bodies: bodiesOf(bottom) },
    lettering,
  );
}

const bodiesOf = (bodies: readonly PlacedBody[]): ReadonlyMap<string, Area> =>
  new Map(bodies.map(({ reference, area }) => [reference, area]));

function extentOf({ plan, top }: { plan: BoardPlan; top: readonly PlacedBody[] }): { width: number; height: number } {
  const areas = [...plan.boards, ...top.map(({ area }) => area)];
  return { width: Math.max(...areas.map((area) => area.x + area.width)), height: Math.max(...areas.map((area) => area.y + area.height)) };
}

const groundOf = (plan: BoardPlan): string =>
  [...plan.boards, ...(plan.cells === null ? [] : [plan.cells])]
    .map((board) => block(board.x + 1, board.y + 1.4, board.width, board.height, 'rx="1.5" fill="#000" opacity="0.5"'))
    .join('');

function boards(plan: BoardPlan, bodies: readonly PlacedBody[]): string {
  const hinge = plan.boards.length < 2 ? '' : pinRows(plan.boards);
  return plan.boards.map((board) => boardBody(board, bodies)).join('') + hinge;
}

function boardBody(board: Area, bodies: readonly PlacedBody[]): string {
  const { x, y, width, height } = board;
  const hole = (cx: number, cy: number): string =>
    isCovered(cx, cy, 2, bodies)
      ? ''
      : `<circle cx="${mm(cx)}" cy="${mm(cy)}" r="1.5" fill="#c9a45a"/><circle cx="${mm(cx)}" cy="${mm(cy)}" r="0.95" fill="#6f7673"/>`;
  const corners =
    width > 60 ? [2.2, width - 2.2].flatMap((across) => [hole(x + across, y + 2.2), hole(x + across, y + height - 2.2)]).join('') : '';
  return (
    block(x + 0.22, y + 0.4, width, height, 'rx="1.2" fill="#7d7a4e"') +
    block(x, y, width, height, 'rx="1.2" fill="url(#mask)"') +
    block(x + 0.18, y + 0.18, width - 0.36, height - 0.36, 'rx="1.1" fill="none" stroke="#5f9a79" stroke-width="0.14" opacity="0.6"') +
    corners
  );
}

/** Rows of solder where the connecting wires of two boards were cut. */
function pinRows([first, second]: readonly Area[]): string {
  if (first === undefined || second === undefined) return '';
  return Array.from({ length: 4 }, (_, index) => {
    const y = first.y + first.height * (0.2 + 0.2 * index);
    const [left, right] = first.x < second.x ? [first, second] : [second, first];
    const joint = (x: number): string => `<circle cx="${mm(x)}" cy="${mm(y)}" r="0.55" fill="url(#tin)"/>`;
    return joint(left.x + left.width - 0.9) + joint(right.x + 0.9);
  }).join('');
}

/** Copper under the mask: from part to part within a stage, never across the insulation, and lands round the parts. */
function copper(entry: Entry, barrierAt: number | null, bodies: readonly PlacedBody[]): string {
  const side = ({ area }: PlacedBody): number =>
    barrierAt === null ? 0 : area.x > barrierAt ? 1 : area.x + area.width < barrierAt ? -1 : 2;
  return entry.stages
    .map(({ id }) => {
      const own = bodies.filter(({ part, shape }) => part.stage === id && shape.kind !== 'cell');
      const runs = own.slice(1).map((body, index) => {
        const before = own[index] ?? body;
        if (side(before) !== side(body) || side(body) === 2) return '';
        return run(middle(before.area), middle(body.area), Math.min(1.6, 0.25 + 0.3 * Math.min(body.area.width, body.area.height)));
      });
      const pads = own.map(({ area }) =>
        block(area.x - 0.45, area.y - 0.45, area.width + 0.9, area.height + 0.9, 'rx="0.4" fill="#357a58" opacity="0.5"'),
      );
      return runs.join('') + pads.join('');
    })
    .join('');
}

const middle = (area: Area): readonly [number, number] => [area.x + area.width / 2, area.y + area.height / 2];

function run([x1, y1]: readonly [number, number], [x2, y2]: readonly [number, number], width: number): string {
  if (Math.hypot(x2 - x1, y2 - y1) > 34) return '';
  return `<path d="M${mm(x1)} ${mm(y1)}H${mm(x2)}V${mm(y2)}" fill="none" stroke="#3a8460" stroke-width="${mm(width)}" stroke-linejoin="round" opacity="0.42"/>`;
}

/** Bare laminate without copper, and the milled slot in its middle. */
function barrier(plan: BoardPlan, x: number): string {
  if (plan.barrier === null) return '';
  const { slot, gap } = plan.barrier;
  const board = plan.boards.find((each) => x >= each.x && x <= each.x + each.width) ?? plan.barrier.board;
  const length = board.height - 7;
  return (
    block(x - gap / 2, board.y + 0.2, gap, board.height - 0.4, 'fill="#123524"') +
    `<path d="M${mm(x - gap / 2)} ${mm(board.y + 0.4)}v${mm(board.height - 0.8)}M${mm(x + gap / 2)} ${mm(board.y + 0.4)}v${mm(board.height - 0.8)}" stroke="#dfe7e0" stroke-width="0.14" stroke-dasharray="1.4 0.8" opacity="0.75"/>` +
    block(x - slot / 2, board.y + 3.5, slot, length, `rx="${mm(slot / 2)}" fill="#858b87"`) +
    block(x - slot / 2, board.y + 3.5, slot * 0.35, length, `rx="${mm(slot * 0.17)}" fill="#3f4540"`)
  );
}

function parts(bodies: readonly PlacedBody[], lettering: Lettering): string {
  const lines = bodies.filter(({ shape }) => shape.kind !== 'cell').map((body) => silkscreen(body, lettering));
  const low = bodies.filter(({ shape }) => shape.height < 4);
  const tall = bodies.filter(({ shape }) => shape.height >= 4);
  const drawn = (group: readonly PlacedBody[]): string => group.map((body) => turnedBody(body, lettering)).join('');
  return `<!--tall--><!--low-->${lines.join('')}${drawn(low)}${drawn(tall)}`;
}

function silkscreen({ reference, area }: PlacedBody, lettering: Lettering): string {
  const size = Math.max(1, Math.min(1.5, area.width * 0.5));
  return (
    block(
      area.x - 0.28,
      area.y - 0.28,
      area.width + 0.56,
      area.height + 0.56,
      'rx="0.2" fill="none" stroke="#e6ece6" stroke-width="0.13" opacity="0.75"',
    ) + letter(lettering, { text: reference, x: area.x + area.width / 2, y: area.y - 0.45, size: size * 1.05, fill: '#eef2ee' })
  );
}

function turnedBody(body: PlacedBody, lettering: Lettering): string {
  const { x, y, height } = body.area;
  const turn = body.turned ? `translate(${mm(x)} ${mm(y + height)}) rotate(-90)` : `translate(${mm(x)} ${mm(y)})`;
  return `<g transform="${turn}">${drawBody(body, lettering)}</g>`;
}

function shadowsOf(bodies: readonly PlacedBody[]): { low: string; tall: string } {
  const shadow = ({ area, shape }: PlacedBody): string => {
    const away = Math.min(0.25 + shape.height * 0.09, 1.8);
    const round = shape.kind === 'can' || shape.kind === 'drum' || shape.kind === 'ring choke' ? area.width / 2 : 0.5;
    return block(area.x + away * 0.7, area.y + away, area.width, area.height, `rx="${mm(round)}" fill="#000"`);
  };
  const of = (group: readonly PlacedBody[]): string => group.map(shadow).join('');
  return { low: of(bodies.filter(({ shape }) => shape.height < 4)), tall: of(bodies.filter(({ shape }) => shape.height >= 4)) };
}

function solderJoints(area: Area, boardAreas: readonly Area[], bodies: readonly PlacedBody[]): string {
  const [cx, cy] = middle(area);
  const upright = area.height > area.width;
  const reach = (upright ? area.height : area.width) / 2 - 1.2;
  const joint = (along: number): string => {
    const [x, y] = upright ? [cx, cy + along] : [cx + along, cy];
    const onBoard = boardAreas.some((board) => x > board.x + 1.5 && x < board.x + board.width - 1.5);
    if (!onBoard || isCovered(x, y, 1.4, bodies)) return '';
    return `<circle cx="${mm(x)}" cy="${mm(y)}" r="1.05" fill="#c8a14f" opacity="0.8"/><circle cx="${mm(x)}" cy="${mm(y)}" r="0.8" fill="url(#tin)"/><circle cx="${mm(x - 0.2)}" cy="${mm(y - 0.25)}" r="0.25" fill="#fff" opacity="0.7"/>`;
  };
  return joint(-reach) + joint(reach);
}

/** Whether a body, with its reference over it, comes nearer to a point than that. */
function isCovered(x: number, y: number, near: number, bodies: readonly PlacedBody[]): boolean {
  return bodies.some(
    ({ area }) => x > area.x - near && x < area.x + area.width + near && y > area.y - near - 1.5 && y < area.y + area.height + near,
  );
}
