import { block, mm, type Lettering } from './lettering.ts';
import { markingLines } from './part-marking.ts';
import type { Body } from './board-plan.ts';
import { printed } from './draw-body.ts';

/** Transformers, inductors on a core, ring chokes flat or upright, and drums. */
export function drawWound(body: Body, lettering: Lettering): string {
  const { kind } = body.shape;
  if (kind === 'ring choke') return ring(body.shape.length / 2);
  if (kind === 'standing choke') return standingRing(body);
  if (kind === 'drum') return drum(body.shape.length / 2);
  return core(body, lettering);
}

/** Two ferrite halves above and below, the tape of the winding between them, pins of the former left and right. */
function core({ part, reference, shape: { length, width } }: Body, lettering: Lettering): string {
  const potted = /potted/u.test(part.package ?? '');
  const lip = 1.6;
  const yoke = width * 0.16;
  const pins = Array.from({ length: 5 }, (_, index) => {
    const y = width * (0.14 + 0.18 * index);
    return `<circle cx="0.8" cy="${mm(y)}" r="0.5" fill="url(#tin)"/><circle cx="${mm(length - 0.8)}" cy="${mm(y)}" r="0.5" fill="url(#tin)"/>`;
  }).join('');
  const former = block(0, 0.4, length, width - 0.8, 'rx="0.5" fill="#22262a"');
  const tape = { x: lip + 0.9, y: yoke, width: length - 2 * lip - 1.8, height: width - 2 * yoke };
  const wire = [tape.x - 0.7, tape.x + tape.width - 0.1]
    .map((x) => block(x, tape.y + 0.6, 0.8, tape.height - 1.2, 'rx="0.3" fill="url(#copper)"'))
    .join('');
  const winding = potted
    ? block(lip, 0.9, length - 2 * lip, width - 1.8, 'rx="1.6" fill="url(#resin)"')
    : wire + block(tape.x, tape.y, tape.width, tape.height, 'fill="url(#tape)"') + overlap(tape);
  const ferrite = potted
    ? ''
    : block(lip + 0.3, 0, length - 2 * lip - 0.6, yoke, 'rx="0.4" fill="url(#ferrite)"') +
      block(lip + 0.3, width - yoke, length - 2 * lip - 0.6, yoke, 'rx="0.4" fill="url(#ferrite)"');
  const lines = part.role === 'transformer' ? markingLines(part, reference) : [reference, ...markingLines(part, reference)];
  return former + pins + winding + ferrite + printed(lettering, lines, tape, potted ? '#cfd5d6' : '#4a3c12', 2.6);
}

function overlap(tape: { x: number; y: number; width: number; height: number }): string {
  const x = tape.x + tape.width * 0.78;
  return (
    `<path d="M${mm(x)} ${mm(tape.y)}V${mm(tape.y + tape.height)}" stroke="#8d7320" stroke-width="0.12" opacity="0.6"/>` +
    block(tape.x, tape.y, tape.width, tape.height * 0.12, 'fill="#fff" opacity="0.16"')
  );
}

function ring(r: number): string {
  const turns = 22;
  const strokes = Array.from({ length: turns }, (_, index) => {
    const angle = (2 * Math.PI * (index + 0.5)) / turns;
    if (Math.abs(Math.sin(angle)) < 0.17) return '';
    const point = (radius: number, turn: number): string =>
      `${mm(r + radius * Math.cos(angle + turn))} ${mm(r + radius * Math.sin(angle + turn))}`;
    return `<path d="M${point(0.46 * r, 0.1)}L${point(0.98 * r, 0)}" stroke="url(#copper)" stroke-width="${mm(0.17 * r)}" stroke-linecap="round"/>`;
  }).join('');
  return `<circle cx="${mm(r)}" cy="${mm(r)}" r="${mm(0.72 * r)}" fill="none" stroke="#2c4a3a" stroke-width="${mm(0.44 * r)}"/>${strokes}`;
}

/** A ring on its edge, seen from above: two windings with the divider between them. */
function standingRing({ shape: { length, width } }: Body): string {
  const half = length / 2 - 0.8;
  const side = (from: number): string => {
    const turns = 9;
    return Array.from({ length: turns }, (_, index) => {
      const x = from + (half * (index + 0.5)) / turns;
      return `<path d="M${mm(x)} 0.5Q${mm(x + 0.2)} ${mm(width / 2)} ${mm(x)} ${mm(width - 0.5)}" fill="none" stroke="url(#copperAcross)" stroke-width="${mm((half / turns) * 0.82)}" stroke-linecap="round"/>`;
    }).join('');
  };
  return (
    block(0.2, 0.9, length - 0.4, width - 1.8, 'rx="2" fill="#24382f"') +
    side(0.3) +
    side(length / 2 + 0.5) +
    block(length / 2 - 0.45, -0.1, 0.9, width + 0.2, 'rx="0.2" fill="#d8d3c4"')
  );
}

function drum(r: number): string {
  const rings = [0.86, 0.72, 0.58]
    .map(
      (share) =>
        `<circle cx="${mm(r)}" cy="${mm(r)}" r="${mm(share * r)}" fill="none" stroke="#555c60" stroke-width="${mm(0.03 * r)}" opacity="0.5"/>`,
    )
    .join('');
  return `<circle cx="${mm(r)}" cy="${mm(r)}" r="${mm(r)}" fill="#17191b"/><circle cx="${mm(r)}" cy="${mm(r)}" r="${mm(0.9 * r)}" fill="url(#ferrite)"/>${rings}<circle cx="${mm(r)}" cy="${mm(r)}" r="${mm(0.22 * r)}" fill="#24282b"/>`;
}
