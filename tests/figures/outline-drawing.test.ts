import { describe, expect, it } from 'vitest';
import { outlineDrawing, type DrawnBody } from '../../src/figures/outline-drawing.ts';
import type { DrawnPort } from '../../src/figures/port-face.ts';

const edge = (mm: number): { mm: number; text: string; tolerance: string } => ({ mm, text: String(mm), tolerance: '±0.2' });
const ports: readonly DrawnPort[] = [
  { id: 'C1', connector: 'USB-C' },
  { id: 'A1', connector: 'USB-A' },
];
const box: DrawnBody = { shape: 'box', length: edge(71), width: edge(58), height: edge(34) };

function draw(body: DrawnBody, layout: 'sheet' | 'phone' = 'sheet'): { svg: string; scale: string | null } {
  return outlineDrawing({ id: 'o', name: 'Quadra', body, ports, layout });
}

/** Numbers of all attributes of one name. */
function numbers(svg: string, attribute: string): number[] {
  return [...svg.matchAll(new RegExp(` ${attribute}="(-?[\\d.]+)"`, 'g'))].map((match) => Number(match[1]));
}

/** The three drawn outlines: front, plan, side. */
function outlines(svg: string): { width: number; height: number }[] {
  return [...svg.matchAll(/<rect class="wide" x="[\d.]+" y="[\d.]+" width="([\d.]+)" height="([\d.]+)"/g)].map((match) => ({
    width: Number(match[1]),
    height: Number(match[2]),
  }));
}

describe('an outline drawing in first angle', () => {
  it('draws front, plan and side at the scale it states', () => {
    const { svg, scale } = draw(box);
    const pixelsPerMm = (Number(scale?.replace(' : 1', '')) * 96) / 25.4;
    const expected = [
      [71, 34],
      [71, 58],
      [58, 34],
    ];
    const drawn = outlines(svg);
    expect(drawn).toHaveLength(3);
    drawn.forEach((view, index) => {
      // Coordinates are rounded to a hundredth of a pixel.
      expect(Math.abs(view.width - (expected[index]?.[0] ?? 0) * pixelsPerMm)).toBeLessThanOrEqual(0.005 + 1e-9);
      expect(Math.abs(view.height - (expected[index]?.[1] ?? 0) * pixelsPerMm)).toBeLessThanOrEqual(0.005 + 1e-9);
    });
  });

  it('writes each dimension once with its tolerance, and on a phone without it', () => {
    for (const text of ['71 ±0.2', '58 ±0.2', '34 ±0.2']) expect(draw(box).svg.split(`>${text}<`)).toHaveLength(2);
    const phone = draw(box, 'phone').svg;
    expect(phone).not.toContain('±');
    for (const text of ['71', '58', '34']) expect(phone.split(`>${text}<`)).toHaveLength(2);
  });

  it.each([
    ['a thumb-sized charger', box],
    ['a long power strip', { shape: 'box', length: edge(260), width: edge(60), height: edge(40) }],
    ['a flat pad', { shape: 'box', length: edge(100), width: edge(100), height: edge(7) }],
    ['a tall tower', { shape: 'box', length: edge(40), width: edge(40), height: edge(170) }],
    ['a cylinder for a vehicle socket', { shape: 'cylinder', diameter: edge(31), height: edge(62) }],
    ['a device nobody has measured', { shape: 'unknown' }],
  ] satisfies [string, DrawnBody][])('keeps %s inside its frame on sheet and phone', (_, body) => {
    for (const layout of ['sheet', 'phone'] as const) {
      const { svg } = draw(body, layout);
      const [width = 0] = numbers(svg, 'width');
      const [height = 0] = numbers(svg, 'height');
      for (const x of [...numbers(svg, 'x'), ...numbers(svg, 'cx')]) expect(x >= 0 && x <= width).toBe(true);
      for (const y of [...numbers(svg, 'y'), ...numbers(svg, 'cy')]) expect(y >= 0 && y <= height).toBe(true);
      expect(svg).not.toMatch(/NaN|Infinity|undefined|style=/);
    }
  });

  it('says in words what it shows', () => {
    const { svg } = draw(box);
    expect(svg).toContain('<title id="o-t">Outline drawing of Quadra</title>');
    expect(svg).toContain('C1 USB-C, A1 USB-A');
  });

  it('states no scale for a size that is not known', () => {
    expect(draw({ shape: 'unknown' }).scale).toBeNull();
    expect(draw({ shape: 'unknown' }).svg).toContain('size not known, measure next');
  });
});
