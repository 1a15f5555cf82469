import { block, letter, mm, sizeFor, type Lettering } from './lettering.ts';
import { markingLines } from './part-marking.ts';
import type { Body } from './board-plan.ts';
import type { ShapeKind } from './part-shape.ts';
import { drawWound } from './draw-wound.ts';

/** Draws one kind of body in its own millimetres, upper left at 0 0, before it is turned. */
export type DrawBody = (body: Body, lettering: Lettering) => string;

const DRAWERS: Readonly<Record<ShapeKind, DrawBody>> = {
  can: drawCan,
  'lying can': drawLyingCan,
  'wound core': drawWound,
  'ring choke': drawWound,
  'standing choke': drawWound,
  drum: drawWound,
  'power inductor': drawPowerInductor,
  leadless: drawLeadless,
  'gull wings': drawGullWings,
  chip: drawChip,
  film: drawFilm,
  disc: drawDisc,
  fuse: drawFuse,
  bridge: drawBridge,
  diode: drawDiode,
  tab: drawTab,
  'USB-C': drawUsbC,
  'USB-A': drawUsbA,
  cell: drawCell,
  strip: drawStrip,
};

/** The body of a part as markup in millimetres, `length` to the right and `width` downwards. */
export function drawBody(body: Body, lettering: Lettering): string {
  return DRAWERS[body.shape.kind](body, lettering);
}

/** Printed lines in the middle of a box, as large as fits. */
export function printed(
  lettering: Lettering,
  lines: readonly string[],
  box: { x: number; y: number; width: number; height: number },
  fill: string,
  most = 1.5,
): string {
  if (lines.length === 0) return '';
  const pitch = box.height / (lines.length + 0.4);
  const size = Math.min(pitch * 0.85, ...lines.map((text) => sizeFor(lettering, text, box.width * 0.86, most)));
  const first = box.y + box.height / 2 - (size * 1.15 * (lines.length - 1)) / 2 + size * 0.36;
  return lines
    .map((text, index) => letter(lettering, { text, x: box.x + box.width / 2, y: first + index * size * 1.15, size, fill, opacity: 0.85 }))
    .join('');
}

/** Aluminium top in its sleeve, with the cross of the vent; polymer cans are printed in colour on the top. */
function drawCan({ part, shape: { length } }: Body, lettering: Lettering): string {
  const r = length / 2;
  const polymer = part.rating?.marks.some(({ text }) => text === 'polymer') ?? false;
  const sleeve = polymer ? 'url(#aluminium)' : 'url(#sleeve)';
  const stripe = polymer
    ? `<path d="M${mm(r - 0.86 * r)} ${mm(r - 0.5 * r)}A${mm(r)} ${mm(r)} 0 0 0 ${mm(r - 0.86 * r)} ${mm(r + 0.5 * r)}Z" fill="#6a2230" opacity="0.85"/>`
    : `<path d="M${mm(0.1 * r)} ${mm(r * 0.6)}A${mm(0.95 * r)} ${mm(0.95 * r)} 0 0 0 ${mm(0.1 * r)} ${mm(r * 1.4)}" fill="none" stroke="#b9c2c6" stroke-width="${mm(0.12 * r)}"/>`;
  const arm = 0.5 * r;
  const vent = `<path d="M${mm(r - arm)} ${mm(r)}H${mm(r + arm)}M${mm(r)} ${mm(r - arm)}V${mm(r + arm)}" stroke="#5c6468" stroke-width="${mm(Math.max(0.1, 0.035 * r))}" opacity="0.55"/>`;
  const lines = markingLines(part, '')
    .map((line) => line.replace(/[µF]|V$/gu, ''))
    .slice(0, 2);
  const box = { x: 0.3 * r, y: 0.55 * r, width: 1.4 * r, height: 0.9 * r };
  return (
    `<circle cx="${mm(r)}" cy="${mm(r)}" r="${mm(r)}" fill="${sleeve}"/>` +
    `<circle cx="${mm(r)}" cy="${mm(r)}" r="${mm(0.84 * r)}" fill="url(#lid)" stroke="#4b5357" stroke-width="${mm(0.05 * r)}"/>` +
    stripe +
    (polymer ? printed(lettering, lines, box, '#3b2028', 1.7) : vent)
  );
}

function drawLyingCan({ part, shape: { length, width } }: Body, lettering: Lettering): string {
  return (
    block(0, 0, length, width, `rx="1.2" fill="url(#roundUp)"`) +
    block(0, 0, 1.3, width, 'rx="0.6" fill="#aab2b5"') +
    block(length - 1.6, 0.3, 1.6, width - 0.6, 'rx="0.5" fill="#191d20"') +
    `<path d="M2.2 0V${mm(width)}" stroke="#000" stroke-width="0.35" opacity="0.5"/>` +
    block(3, width * 0.7, length - 6, width * 0.14, 'fill="#c9b78c" opacity="0.75"') +
    printed(lettering, markingLines(part, ''), { x: 4, y: width * 0.08, width: length - 8, height: width * 0.56 }, '#d9cda8', 3)
  );
}

function drawPowerInductor({ part, shape: { length, width } }: Body, lettering: Lettering): string {
  const inner = { x: 0.35, y: 0.35, width: length - 0.7, height: width - 0.7 };
  return (
    block(0, width * 0.2, 0.5, width * 0.6, 'fill="url(#tin)"') +
    block(length - 0.5, width * 0.2, 0.5, width * 0.6, 'fill="url(#tin)"') +
    block(0.25, 0, length - 0.5, width, 'rx="0.7" fill="#3d4142"') +
    block(inner.x + 0.2, inner.y, inner.width - 0.4, inner.height, 'rx="0.6" fill="url(#moulded)"') +
    printed(lettering, markingLines(part, ''), inner, '#e8ecec', 2)
  );
}

function drawLeadless({ part, reference, shape: { length, width } }: Body, lettering: Lettering): string {
  const lands = Math.max(2, Math.round(length / 1.1));
  const pitch = length / lands;
  const pads = Array.from({ length: lands }, (_, index) =>
    block(pitch * (index + 0.3), -0.28, pitch * 0.4, width + 0.56, 'fill="url(#tin)"'),
  ).join('');
  return (
    pads +
    block(0, 0, length, width, 'rx="0.12" fill="url(#epoxy)"') +
    `<circle cx="0.6" cy="${mm(width - 0.6)}" r="0.24" fill="#555b5e"/>` +
    printed(lettering, markingLines(part, reference), { x: 0.2, y: 0, width: length - 0.4, height: width }, '#aeb6b8', 1.25)
  );
}

/** Leads on the two short ends of the drawing; SO parts have theirs above and below. */
function drawGullWings({ part, reference, shape: { length, width } }: Body, lettering: Lettering): string {
  const endwise = part.role === 'optocoupler';
  const count = endwise ? 2 : Math.max(3, Math.round(length / 1.27));
  const along = endwise ? width : length;
  const pitch = along / count;
  const leads = Array.from({ length: count }, (_, index) => {
    const at = pitch * (index + 0.32);
    return endwise ? block(0, at, length, pitch * 0.36, 'fill="url(#tin)"') : block(at, 0, pitch * 0.36, width, 'fill="url(#tin)"');
  }).join('');
  const body = endwise ? { x: 2, y: 0, width: length - 4, height: width } : { x: 0, y: width * 0.17, width: length, height: width * 0.66 };
  return (
    leads +
    block(body.x, body.y, body.width, body.height, `rx="0.15" fill="${endwise ? 'url(#white)' : 'url(#epoxy)'}"`) +
    `<circle cx="${mm(body.x + 0.6)}" cy="${mm(body.y + body.height - 0.6)}" r="0.25" fill="${endwise ? '#9aa1a3' : '#565d60'}"/>` +
    printed(lettering, markingLines(part, reference), body, endwise ? '#444a4c' : '#b5bcbe', 1.25)
  );
}

function drawChip({ part, shape: { length, width } }: Body, lettering: Lettering): string {
  const capacitor = /capacitor$/u.test(part.role);
  const end = Math.min(0.55, length * 0.2);
  return (
    block(0, 0, length, width, 'rx="0.12" fill="url(#tin)"') +
    block(end, 0.03, length - 2 * end, width - 0.06, capacitor ? 'fill="url(#ceramic)"' : 'fill="#1f2224"') +
    (capacitor ? '' : printed(lettering, markingLines(part, ''), { x: end, y: 0, width: length - 2 * end, height: width }, '#dfe4e4', 0.95))
  );
}

function drawFilm({ part, shape: { length, width } }: Body, lettering: Lettering): string {
  const yellow = part.role === 'x-capacitor';
  const fill = yellow ? 'url(#filmYellow)' : part.role === 'resonant-capacitor' ? 'url(#filmRed)' : 'url(#filmBlue)';
  return (
    block(0, 0, length, width, `rx="0.5" fill="${fill}"`) +
    block(0.35, 0.35, length - 0.7, width - 0.7, 'rx="0.3" fill="none" stroke="#fff" stroke-width="0.12" opacity="0.35"') +
    printed(lettering, markingLines(part, ''), { x: 0.4, y: 0, width: length - 0.8, height: width }, yellow ? '#3a3216' : '#f2ece6', 1.7)
  );
}

/** A disc that stands on its edge, seen from above; the leads of one across the insulation spread beyond it. */
function drawDisc({ part, shape: { length, width } }: Body): string {
  const spread = part.role === 'y-capacitor' ? 1.8 : 0;
  const fill = part.role === 'varistor' ? 'url(#discBlue)' : part.role === 'ntc-thermistor' ? 'url(#discDark)' : 'url(#discSky)';
  const leads =
    spread === 0
      ? ''
      : block(0.5, width / 2 - 0.3, length - 1, 0.6, 'rx="0.3" fill="url(#tin)"') +
        [0.7, length - 0.7].map((x) => `<circle cx="${mm(x)}" cy="${mm(width / 2)}" r="0.65" fill="url(#tin)"/>`).join('');
  const reach = length / 2 - spread;
  return (
    leads +
    `<ellipse cx="${mm(length / 2)}" cy="${mm(width / 2)}" rx="${mm(reach)}" ry="${mm(width / 2)}" fill="${fill}"/>` +
    `<ellipse cx="${mm(length / 2 - 0.08 * reach)}" cy="${mm(width * 0.34)}" rx="${mm(0.6 * reach)}" ry="${mm(width * 0.1)}" fill="#fff" opacity="0.28"/>`
  );
}

function drawFuse({ part, shape: { length, width } }: Body, lettering: Lettering): string {
  return (
    block(0, 0, length, width, 'rx="0.5" fill="url(#ceramicTube)"') +
    block(0, 0, 1.5, width, 'rx="0.4" fill="url(#brass)"') +
    block(length - 1.5, 0, 1.5, width, 'rx="0.4" fill="url(#brass)"') +
    printed(lettering, markingLines(part, ''), { x: 1.6, y: 0, width: length - 3.2, height: width }, '#3b3326', 1.5)
  );
}

function drawBridge({ part, shape: { length, width } }: Body, lettering: Lettering): string {
  const leads = [0.16, 0.64].map((at) => block(length * at, -0.7, length * 0.2, width + 1.4, 'fill="url(#tin)"')).join('');
  const sign = (text: string, x: number, y: number): string => letter(lettering, { text, x, y, size: 1.5, fill: '#c5cbcd' });
  return (
    leads +
    block(0, 0, length, width, 'rx="0.3" fill="url(#epoxy)"') +
    sign('~', 1.2, 1.6) +
    sign('~', length - 1.2, 1.6) +
    sign('+', 1.2, width - 0.5) +
    sign('−', length - 1.2, width - 0.5) +
    printed(lettering, markingLines(part, ''), { x: 1, y: width * 0.2, width: length - 2, height: width * 0.6 }, '#b5bcbe', 1.5)
  );
}

function drawDiode({ part, reference, shape: { length, width } }: Body, lettering: Lettering): string {
  return (
    block(0, width * 0.2, length, width * 0.6, 'fill="url(#tin)"') +
    block(0.5, 0, length - 1, width, 'rx="0.15" fill="url(#epoxy)"') +
    block(0.9, 0, 0.55, width, 'fill="#c2c8ca" opacity="0.8"') +
    printed(lettering, markingLines(part, reference), { x: 1.5, y: 0, width: length - 2.1, height: width }, '#b5bcbe', 1.1)
  );
}

/** A body on a cooling tab, leads at the other end. */
function drawTab({ part, reference, shape: { length, width } }: Body, lettering: Lettering): string {
  const lead = (at: number): string => block(length * at, width * 0.8, length * 0.14, width * 0.2, 'fill="url(#tin)"');
  return (
    block(length * 0.06, 0, length * 0.88, width * 0.3, 'rx="0.2" fill="url(#tin)"') +
    lead(0.13) +
    lead(0.73) +
    block(0, width * 0.16, length, width * 0.66, 'rx="0.25" fill="url(#epoxy)"') +
    printed(
      lettering,
      markingLines(part, reference),
      { x: 0.3, y: width * 0.16, width: length - 0.6, height: width * 0.66 },
      '#b5bcbe',
      1.4,
    )
  );
}

function drawUsbC({ part, shape: { length, width } }: Body): string {
  if (/vertical/u.test(part.note ?? '')) {
    const y = width / 2;
    return (
      block(0, 0, length, width, 'rx="0.8" fill="#2a2d2f"') +
      block(length / 2 - 1.63, y - 4.2, 3.26, 8.4, 'rx="1.6" fill="url(#steel)"') +
      block(length / 2 - 1.25, y - 3.8, 2.5, 7.6, 'rx="1.2" fill="#15181a"') +
      block(length / 2 - 0.35, y - 3.1, 0.7, 6.2, 'fill="#c79b4b"')
    );
  }
  return (
    block(0.6, -0.45, 1.2, width + 0.9, 'fill="url(#tin)"') +
    block(0, 0, length, width, 'rx="0.5" fill="url(#steel)"') +
    block(0.5, width * 0.32, 2, width * 0.36, 'rx="0.3" fill="#6d7477" opacity="0.7"') +
    block(length - 1, 0.1, 1, width - 0.2, 'rx="0.3" fill="#eef1f2" opacity="0.5"')
  );
}

function drawUsbA({ shape: { length, width } }: Body): string {
  return (
    block(2.4, -0.5, 1.4, width + 1, 'fill="url(#tin)"') +
    block(0, 0, length, width, 'rx="0.4" fill="url(#steel)"') +
    [0.3, 0.62].map((at) => block(length * 0.35, width * at - 0.6, 3.4, 1.2, 'rx="0.3" fill="#5f666a" opacity="0.75"')).join('') +
    block(length - 1.2, 0.1, 1.2, width - 0.2, 'fill="#f1f4f5" opacity="0.5"')
  );
}

function drawCell({ part, shape: { length, width } }: Body, lettering: Lettering): string {
  return (
    block(0, 0.3, length, width - 0.6, 'rx="0.9" fill="url(#roundTeal)"') +
    block(0, 0.6, 1.4, width - 1.2, 'rx="0.6" fill="url(#tin)"') +
    block(length - 1.4, 0.6, 1.4, width - 1.2, 'rx="0.6" fill="url(#tin)"') +
    printed(lettering, markingLines(part, ''), { x: 14, y: width * 0.22, width: length - 28, height: width * 0.5 }, '#e8f0ef', 4)
  );
}

function drawStrip({ shape: { length, width } }: Body): string {
  return block(0, 0, length, width, 'rx="0.2" fill="url(#tin)" stroke="#6e7679" stroke-width="0.12"');
}
