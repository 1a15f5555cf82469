import type { SheetSummary, SiteSettings } from '../corpus/prepared.ts';
import { escapeText, px } from '../figures/markup.ts';
import { connectorFace } from '../figures/port-face.ts';
import { twoLines } from '../figures/power-path/path-words.ts';
import { stageSymbols } from '../figures/stage-glyph.ts';
import { textAdvance, textOutline, type FaceOutlines } from '../figures/text-outline.ts';
import { stageOf } from '../stages/index.ts';
import { frontOf } from './line-up.ts';
import { SHARING_SIZE, sharingFields, type SharingFields } from './sharing-fields.ts';

/** Outlines of the faces that a sharing image is lettered with, each with those that stand in for it. */
export interface SharingFaces {
  readonly mono: readonly FaceOutlines[];
  readonly sans: readonly FaceOutlines[];
}

const FRAME = { left: 46, right: 1154, top: 40, bottom: 590 };
const ZONE_B = 424;
const BLOCK = 700;
/** Paper scheme of the sheet; an image has no second one. */
const INK = { ink: '#10222d', soft: '#3a4d58', sheet: '#f6f8f6' };
const TONES = { soft: 's', caution: 'c' } as const;
const STYLE = `path,rect,circle,use{fill:none;stroke:${INK.ink}}.t{stroke:none;fill:${INK.ink}}.s{stroke:none;fill:${INK.soft}}.c{stroke:none;fill:#a82a10}.thin{stroke-width:1}.med{stroke-width:2}.wide{stroke-width:3}.centre{stroke-width:1;stroke-dasharray:14 3 2 3}.solid{fill:${INK.ink};stroke:none}.dd{stroke-dasharray:3 2}symbol{overflow:visible}`;

/** The sheet as others see it where its address is shared: frame, outline, title block and power path, all lettering as outlines. */
export function sharingImage(sheet: SheetSummary, site: Pick<SiteSettings, 'name'>, faces: SharingFaces): string {
  const { width, height } = SHARING_SIZE;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"><style>${STYLE}</style>` +
    `<defs>${stageSymbols(sheet.glyphs)}</defs><rect width="${width}" height="${height}" fill="${INK.sheet}" style="stroke:none;fill:${INK.sheet}"/>` +
    frame(faces) +
    outline(sheet, faces) +
    titleBlock(sharingFields(sheet), headLine(sheet, site.name), faces) +
    powerPath(sheet.glyphs, faces) +
    '</svg>'
  );
}

interface HeadLine {
  readonly text: string;
  readonly caution?: true;
}

interface Lettered {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  /** Ink unless said otherwise. */
  readonly tone?: 'soft' | 'caution';
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Pixels that there are; a longer line is set smaller. */
  readonly room?: number;
}

function lettered(text: string, faces: readonly FaceOutlines[], { x, y, size, tone, anchor = 'start', room = Infinity }: Lettered): string {
  const natural = textAdvance({ text, faces, size });
  const fitted = natural > room ? (size * room) / natural : size;
  return `<path class="${tone === undefined ? 't' : TONES[tone]}" d="${textOutline({ text, faces, size: fitted, x, y, anchor })}"/>`;
}

/** Frame, centring mark, and the letters and figures of the zones. */
function frame({ mono }: SharingFaces): string {
  const { left, right, top, bottom } = FRAME;
  const pitch = (right - left) / 8;
  const figures = Array.from({ length: 8 }, (_, index) => {
    const x = left + pitch * (index + 0.5);
    const edge = index === 0 ? '' : `<path class="thin" d="M${px(x - pitch / 2)} ${top - 18}V${top}M${px(x - pitch / 2)} ${bottom}v18"/>`;
    const figure = (y: number): string => lettered(String(index + 1), mono, { x, y, size: 19, tone: 'soft', anchor: 'middle' });
    return edge + figure(top - 12) + figure(bottom + 26);
  });
  const letter = (text: string, y: number): string =>
    [left - 24, right + 24].map((x) => lettered(text, mono, { x, y, size: 21, tone: 'soft', anchor: 'middle' })).join('');
  return (
    `<rect x="${left}" y="${top}" width="${right - left}" height="${bottom - top}" stroke-width="3.5"/>` +
    `<path class="thin" d="M${left - 30} ${ZONE_B}H${right + 30}"/><path stroke-width="3.5" d="M600 ${top - 20}v30"/>` +
    figures.join('') +
    letter('A', (top + ZONE_B) / 2) +
    letter('B', (ZONE_B + bottom) / 2 + 7)
  );
}

/** Front with its ports above, plan below at the same scale. */
function outline(sheet: SheetSummary, { mono, sans }: SharingFaces): string {
  const middle = (FRAME.left + BLOCK) / 2;
  if (sheet.outline === null)
    return lettered('size not known, measure next', sans, { x: middle, y: 240, size: 26, tone: 'soft', anchor: 'middle' });
  const { length, height, depth } = edgesOf(sheet, sheet.outline);
  const [room, gap] = [{ width: BLOCK - FRAME.left - 190, height: ZONE_B - FRAME.top - 118 }, 26];
  const k = Math.min(room.width / length, (room.height - gap) / (height + depth), 7);
  const [w, h, d] = [length * k, height * k, depth * k];
  const x = middle - w / 2 - 16;
  const y = FRAME.top + 34 + (room.height - gap - h - d) / 2;
  const round = Math.min(3.5, 0.18 * Math.min(length, depth, height)) * k;
  const plan = y + h + gap;
  const box = (top: number, tall: number): string =>
    `<rect class="wide" x="${px(x)}" y="${px(top)}" width="${px(w)}" height="${px(tall)}" rx="${px(round)}"/>`;
  return (
    `<path class="centre" d="M${px(x - 12)} ${px(y + h / 2)}h${px(w + 24)}M${px(x - 12)} ${px(plan + d / 2)}h${px(w + 24)}M${px(x + w / 2)} ${px(plan - 10)}v${px(d + 20)}"/>` +
    (sheet.round === true ? `<circle class="wide" cx="${px(x + w / 2)}" cy="${px(y + h / 2)}" r="${px(h / 2)}"/>` : box(y, h)) +
    ports(sheet, sheet.round === true ? { x: x + w / 2 - 0.42 * h, y, width: 0.84 * h, height: h } : { x, y, width: w, height: h }, k) +
    box(plan, d) +
    across(x, w, plan + d + 36, shortest(length), mono) +
    down(x + w + 34, y, h, `${sheet.round === true ? '⌀' : ''}${shortest(height)}`, mono) +
    down(x + w + 34, plan, d, shortest(depth), mono)
  );
}

/** A cylinder shows its end where a box shows its front, and its side below. */
function edgesOf(sheet: SheetSummary, outline: readonly [number, number, number]): { length: number; height: number; depth: number } {
  const [across, depth, along] = outline;
  return sheet.round === true ? { length: along, height: across, depth: across } : { ...frontOf(sheet, outline), depth };
}

const shortest = (millimetres: number): string => String(Math.round(millimetres * 10) / 10);

/** Ports on the centre line of the front, made smaller together where they would touch. */
function ports(sheet: SheetSummary, box: { x: number; y: number; width: number; height: number }, k: number): string {
  const drawn = sheet.ports.filter(({ connector }) => connector !== 'wireless');
  const pitch = box.width / Math.max(drawn.length, 1);
  const scale = Math.min(k, (pitch - 8) / 12.5, (box.height - 8) / 6);
  return drawn
    .map(({ connector }, index) => {
      const x = box.x + pitch * (index + 0.5);
      const cleared = `<rect x="${px(x - 7 * scale)}" y="${px(box.y + box.height / 2 - 3)}" width="${px(14 * scale)}" height="6" style="stroke:none;fill:${INK.sheet}"/>`;
      return cleared + connectorFace(connector, x, box.y + box.height / 2, Math.max(scale, 0.5));
    })
    .join('');
}

const ARROW = 9;

function across(x: number, width: number, y: number, text: string, faces: readonly FaceOutlines[]): string {
  return (
    `<path class="thin" d="M${px(x)} ${px(y - 28)}v34M${px(x + width)} ${px(y - 28)}v34M${px(x)} ${px(y)}h${px(width)}"/>` +
    `<path class="solid" d="M${px(x)} ${px(y)}l${ARROW} -3v6ZM${px(x + width)} ${px(y)}l-${ARROW} -3v6Z"/>` +
    lettered(text, faces, { x: x + width / 2, y: y - 7, size: 21, anchor: 'middle' })
  );
}

function down(x: number, y: number, height: number, text: string, faces: readonly FaceOutlines[]): string {
  return (
    `<path class="thin" d="M${px(x - 26)} ${px(y)}h32M${px(x - 26)} ${px(y + height)}h32M${px(x)} ${px(y)}v${px(height)}"/>` +
    `<path class="solid" d="M${px(x)} ${px(y)}l-3 ${ARROW}h6ZM${px(x)} ${px(y + height)}l-3 -${ARROW}h6Z"/>` +
    lettered(text, faces, { x: x + 12, y: y + height / 2 + 7, size: 21 })
  );
}

/** A recall stands before everything else, in the colour of caution. */
function headLine({ recall }: SheetSummary, site: string): HeadLine {
  return recall === null ? { text: `Teardown, ${site}` } : { text: `▲ Recalled ${recall.date}`, caution: true };
}

function titleBlock(fields: SharingFields, head: HeadLine, faces: SharingFaces): string {
  const [left, right] = [BLOCK, FRAME.right];
  const room = right - left - 40;
  const half = (left + right) / 2;
  const rows = [182, 268, 354, ZONE_B];
  const label = (text: string, x: number, y: number): string => lettered(text, faces.sans, { x, y, size: 18, tone: 'soft' });
  const field = (name: string, value: string, x: number, y: number, size: number): string =>
    label(name, x, y + 25) + lettered(value, faces.mono, { x, y: y + 66, size, room: half - left - 36 });
  const foot = fields.issue.map(({ label: name, value, at }) => {
    const x = left + 20 + at * room;
    return label(name, x, 354 + 25) + lettered(value, faces.mono, { x, y: 354 + 55, size: 23, room: 0.34 * room });
  });
  return (
    `<path class="wide" d="M${left} ${FRAME.top}V${ZONE_B}"/>` +
    `<path class="thin" d="${rows
      .slice(0, 3)
      .map((y) => `M${left} ${y}H${right}`)
      .join('')}M${half} ${rows[0] ?? 0}V${rows[2] ?? 0}"/>` +
    lettered(head.text, faces.sans, {
      x: left + 20,
      y: 72,
      size: head.caution === true ? 24 : 20,
      room,
      tone: head.caution === true ? 'caution' : 'soft',
    }) +
    fields.name.map((line, index) => lettered(line, faces.mono, { x: left + 20, y: 116 + index * 46, size: 46, room })).join('') +
    field('Rated output', fields.power, left + 20, 182, 36) +
    field('Power density', fields.density, half + 20, 182, 36) +
    field('Size, mm', fields.size, left + 20, 268, 28) +
    field('Kind', fields.kind, half + 20, 268, 28) +
    foot.join('')
  );
}

/** Stage glyphs in the order power flows with their names; equal neighbours once, with their number. */
function powerPath(kinds: readonly string[], faces: SharingFaces): string {
  const groups = grouped(kinds);
  const pitch = (FRAME.right - FRAME.left - 40) / Math.max(groups.length, 1);
  const [y, size] = [ZONE_B + 34, 62];
  const glyphs = groups.map(({ kind, count }, index) => {
    const x = FRAME.left + 20 + pitch * (index + 0.5);
    const joined = index === 0 ? '' : `<path class="med" d="M${px(x - pitch + size / 2)} ${y + size / 2}H${px(x - size / 2)}"/>`;
    const name = `${count > 1 ? `${count} × ` : ''}${stageOf(kind)?.name ?? kind}`;
    const lines = twoLines(name, 15).map((line, row) =>
      lettered(line, faces.sans, { x, y: y + size + 26 + row * 22, size: 20, tone: 'soft', anchor: 'middle', room: pitch - 8 }),
    );
    return `${joined}<use href="#s-${escapeText(kind)}" x="${px(x - size / 2)}" y="${y}" width="${size}" height="${size}"/>${lines.join('')}`;
  });
  return glyphs.join('');
}

function grouped(kinds: readonly string[]): readonly { readonly kind: string; readonly count: number }[] {
  const groups: { kind: string; count: number }[] = [];
  for (const kind of kinds) {
    const last = groups.at(-1);
    if (last?.kind === kind) last.count += 1;
    else groups.push({ kind, count: 1 });
  }
  return groups;
}
