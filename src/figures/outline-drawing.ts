import { horizontalDimension, verticalDimension } from './dimension-line.ts';
import { figure, px } from './markup.ts';
import { portFace, type DrawnPort } from './port-face.ts';

/** An edge in millimetres and how the drawing writes it: "71" and "±0.2", "" where no tolerance is known. */
export interface DrawnEdge {
  readonly mm: number;
  readonly text: string;
  readonly tolerance: string;
}

/** The body to draw: a box by its written edges, a cylinder, or nothing measured. */
export type DrawnBody =
  | { readonly shape: 'box'; readonly length: DrawnEdge; readonly width: DrawnEdge; readonly height: DrawnEdge }
  | { readonly shape: 'cylinder'; readonly diameter: DrawnEdge; readonly height: DrawnEdge }
  | { readonly shape: 'unknown' };

export interface OutlineInput {
  readonly id: string;
  readonly name: string;
  readonly body: DrawnBody;
  readonly ports: readonly DrawnPort[];
  /** The sheet has three views with tolerances; the phone has front and plan without. */
  readonly layout: 'sheet' | 'phone';
}

/** The figure and the scale to state beside it, null where nothing is to scale. */
export interface OutlineDrawing {
  readonly svg: string;
  readonly scale: string | null;
}

interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** CSS pixels a millimetre at 1 : 1. */
const PIXELS_PER_MM = 96 / 25.4;
const WIDTH = { sheet: 702, phone: 320 } as const;

/**
 * Outline drawing in first angle: front, plan below it, left side to its right; a cylinder shows its end and its side.
 * Ports stand on the front by type, named above; their places and the corner radii are conventions of the drawing.
 */
export function outlineDrawing(input: OutlineInput): OutlineDrawing {
  const { body } = input;
  if (body.shape === 'box') return boxDrawing(input, body);
  if (body.shape === 'cylinder') return cylinderDrawing(input, body);
  return unknownDrawing(input);
}

function boxDrawing(input: OutlineInput, body: Extract<DrawnBody, { shape: 'box' }>): OutlineDrawing {
  const sheet = input.layout === 'sheet';
  const [l, w, h] = [body.length.mm, body.width.mm, body.height.mm];
  const left = 40;
  const across = WIDTH[input.layout] - left - (sheet ? 122 : 12);
  const scale = statedScale(Math.min(across / (sheet ? l + w : l), 400 / (h + w)));
  const k = scale * PIXELS_PER_MM;
  const front: Rect = { x: left, y: 18, width: l * k, height: h * k };
  const plan: Rect = { x: left, y: front.y + front.height + 46, width: l * k, height: w * k };
  const radius = Math.min(3.5, 0.18 * Math.min(l, w, h)) * k;
  const planBottom = plan.y + plan.height;
  const views =
    centreLines(front, false) +
    outline(front, radius) +
    portFace(input.ports, front, k) +
    centreLines(plan, true) +
    outline(plan, radius) +
    coils(input.ports, plan, k) +
    horizontalDimension(plan.x, plan.x + plan.width, planBottom, planBottom + 30, label(body.length, sheet));
  const rest = sheet ? sideView(input, body, front, k, radius) : phoneDimensions(body, front, plan);
  return finished(input, views + rest, planBottom + 40, scale, `${body.length.text} × ${body.width.text} × ${body.height.text} mm`);
}

function sideView(input: OutlineInput, body: Extract<DrawnBody, { shape: 'box' }>, front: Rect, k: number, radius: number): string {
  const side: Rect = { x: front.x + front.width + 66, y: front.y, width: body.width.mm * k, height: front.height };
  const [right, bottom] = [side.x + side.width, side.y + side.height];
  const socket = input.ports.some((port) => port.connector === 'USB-A') ? 6 : 3.5;
  const opening =
    input.ports.length === 0
      ? ''
      : `<rect class="med" x="${px(right - 5)}" y="${px(side.y + side.height / 2 - (socket * k) / 2)}" width="5" height="${px(socket * k)}"/>`;
  return (
    centreLines(side, false) +
    outline(side, radius) +
    opening +
    horizontalDimension(side.x, right, bottom, bottom + 30, label(body.width, true)) +
    verticalDimension(side.y, bottom, right, right + 34, label(body.height, true))
  );
}

function phoneDimensions(body: Extract<DrawnBody, { shape: 'box' }>, front: Rect, plan: Rect): string {
  return (
    verticalDimension(front.y, front.y + front.height, front.x, front.x - 18, label(body.height, false)) +
    verticalDimension(plan.y, plan.y + plan.height, plan.x, plan.x - 18, label(body.width, false))
  );
}

function cylinderDrawing(input: OutlineInput, body: Extract<DrawnBody, { shape: 'cylinder' }>): OutlineDrawing {
  const sheet = input.layout === 'sheet';
  const [d, h] = [body.diameter.mm, body.height.mm];
  const across = WIDTH[input.layout] - (sheet ? 220 : 96);
  const scale = statedScale(Math.min(across / (d + h), 300 / d));
  const k = scale * PIXELS_PER_MM;
  const end: Rect = { x: sheet ? 46 : 12, y: 24, width: d * k, height: d * k };
  const side: Rect = { x: end.x + end.width + (sheet ? 66 : 28), y: end.y, width: h * k, height: d * k };
  const [right, bottom] = [side.x + side.width, side.y + side.height];
  const inner: Rect = { x: end.x + end.width * 0.12, y: end.y, width: end.width * 0.76, height: end.height };
  const circle = `<circle class="wide" cx="${px(end.x + end.width / 2)}" cy="${px(end.y + end.height / 2)}" r="${px(end.width / 2)}"/>`;
  const views =
    centreLines(end, true) +
    circle +
    portFace(input.ports, inner, k) +
    centreLines(side, false) +
    outline(side, Math.min(3.5, 0.1 * d) * k) +
    horizontalDimension(side.x, right, bottom, bottom + 30, label(body.height, sheet)) +
    verticalDimension(side.y, bottom, right, right + (sheet ? 34 : 26), `⌀${label(body.diameter, sheet)}`);
  return finished(input, views, bottom + 40, scale, `diameter ${body.diameter.text} mm, length ${body.height.text} mm`);
}

function unknownDrawing(input: OutlineInput): OutlineDrawing {
  const width = input.layout === 'sheet' ? 420 : 280;
  const box: Rect = { x: 20, y: 20, width, height: 150 };
  const ports = portFace(input.ports, { ...box, height: 110 }, 4);
  const frame = `<rect class="hidden-edge" x="${box.x}" y="${box.y}" width="${box.width}" height="${box.height}" rx="14"/>`;
  const words = `<text class="mid" x="${px(box.x + box.width / 2)}" y="${box.y + 134}">size not known, measure next</text>`;
  return finished(input, frame + ports + words, 192, null, 'size not known');
}

function finished(input: OutlineInput, body: string, height: number, scale: number | null, size: string): OutlineDrawing {
  const ports = input.ports.map((port) => `${port.id} ${port.connector}`).join(', ');
  const svg = figure({
    id: input.id,
    className: `fig outline only-${input.layout}`,
    width: WIDTH[input.layout],
    height,
    title: `Outline drawing of ${input.name}`,
    description: `${size}. Ports on the front: ${ports === '' ? 'none' : ports}.`,
    body,
  });
  return { svg, scale: scale === null ? null : `${px(scale)} : 1` };
}

function outline(box: Rect, radius: number): string {
  return `<rect class="wide" x="${px(box.x)}" y="${px(box.y)}" width="${px(box.width)}" height="${px(box.height)}" rx="${px(radius)}"/>`;
}

/** Centre lines over-run the edge by 8 px; a face gets the one through its ports, a plan both. */
function centreLines(box: Rect, both: boolean): string {
  const [cx, cy] = [box.x + box.width / 2, box.y + box.height / 2];
  const upright = both ? `M${px(cx)} ${px(box.y - 8)}V${px(box.y + box.height + 8)}` : '';
  return `<path class="centre" d="M${px(box.x - 8)} ${px(cy)}H${px(box.x + box.width + 8)}${upright}"/>`;
}

/** A wireless output stands on the top: a ring in the plan. */
function coils(ports: readonly DrawnPort[], plan: Rect, k: number): string {
  const wireless = ports.filter((port) => port.connector === 'wireless');
  return wireless
    .map((port, index) => {
      const x = plan.x + (plan.width * (index + 0.5)) / wireless.length;
      const y = plan.y + plan.height / 2;
      return `<circle class="hidden-edge" cx="${px(x)}" cy="${px(y)}" r="${px(Math.min(21 * k, plan.height * 0.4, plan.width * 0.4))}"/><text class="num strong mid" x="${px(x)}" y="${px(y - 8)}">${port.id}</text>`;
    })
    .join('');
}

function label(edge: DrawnEdge, withTolerance: boolean): string {
  return withTolerance && edge.tolerance !== '' ? `${edge.text} ${edge.tolerance}` : edge.text;
}

/** A scale one can state: steps of 0.1, finer below 0.5, never above 2.5 : 1. */
function statedScale(pixelsPerMm: number): number {
  const largest = Math.min(2.5, pixelsPerMm / PIXELS_PER_MM);
  const step = largest < 0.5 ? 0.05 : 0.1;
  return Math.max(step, Math.round(Math.floor(largest / step + 1e-9) * step * 100) / 100);
}

/** Symbol of first-angle projection: the frustum and its end view. */
export function firstAngleSymbol(): string {
  return (
    '<svg class="fig" aria-hidden="true" width="92" height="44" viewBox="0 0 92 44"><path class="med" d="M8 14v16l30 6V8Z"/>' +
    '<circle class="med" cx="68" cy="22" r="14"/><circle class="med" cx="68" cy="22" r="8"/><path class="centre" d="M0 22h46M48 22h40M68 2v40"/></svg>'
  );
}
