import { escapeText } from './markup.ts';

const FRAME = '<path d="M.75.75h32.5v32.5H.75Z"/>';
const DIRECT = (x: number, y: number): string => `<path d="M${x} ${y}h10"/><path class="dd" d="M${x} ${y + 3}h10"/>`;
const WINDING = (x: number, bulge: number): string =>
  `<path d="M${x} 5.5q${bulge} 2.9 0 5.75 ${bulge} 2.9 0 5.75 ${bulge} 2.9 0 5.75 ${bulge} 2.9 0 5.75"/>`;
const WINDINGS = `${WINDING(12.5, 6)}${WINDING(24.5, -6)}`;
const DOT = (x: number, y: number): string => `<circle class="solid" cx="${x}" cy="${y}" r="1.5"/>`;
const STEPS_UP = '<path d="M6 26.5h6v-5h6v-5h6v-5h5"/>';
const STEPS_DOWN = '<path d="M5 9.5h6v5h6v5h6v5h6"/>';
const DIODE = '<path d="M4 17h9m9 0h8M13 11v12l9-6ZM22 10.5v13"/>';

/**
 * What stands in the square of each stage, on 34 × 34: steps up boost and down buck, windings a transformer (dots at its ends for a flyback),
 * a diode rectifies. Drawn for this site; the name always stands beside it.
 */
const SHAPES: Readonly<Record<string, string>> = {
  'input-filter': '<path d="M5 12.5q4.5-7 9 0t9 0M11 24.5q4.5-7 9 0t9 0M9 29 25 5"/>',
  rectifier: '<path d="M1 33 33 1M5 11q3-6 6 0t6 0"/>' + DIRECT(19.5, 24),
  'boost-pfc': STEPS_UP + DIRECT(6, 8),
  'totem-pole-pfc': '<path d="M14 26.5h5v-5h5v-5h5M5 8q3-6 6 0t6 0M8 15v14M5 19h6M5 25h6"/>',
  flyback: WINDINGS + DOT(9, 6.5) + DOT(28, 27),
  'active-clamp-flyback': WINDINGS + DOT(9, 6.5) + DOT(28, 27) + '<path d="M4 13v8M7 13v8"/>',
  'asymmetrical-half-bridge-flyback': WINDINGS + DOT(9, 6.5) + DOT(28, 27) + '<path d="M3.5 17H6m-.2-4v8m2.6-8v8"/>',
  'llc-half-bridge': WINDINGS + '<path d="M2 17h3m0-4v8m3-8v8m0-4h3"/>',
  forward: WINDINGS + DOT(9, 6.5) + DOT(28, 6.5),
  'secondary-rectifier': DIODE,
  'bulk-capacitor': '<path d="M17 5v10M9 15h16M9 19h16M17 19v10"/>',
  buck: STEPS_DOWN + DIRECT(19, 7),
  boost: STEPS_UP + DIRECT(6, 8),
  'buck-boost': '<path d="M4 9.5h5v6h5v6h6v-6h5v-6h5"/>',
  linear: '<path d="M4 10h5l14 14h7"/>',
  'battery-pack': '<path d="M3 17h5m0-7v14m4-10v6m4-10v14m4-10v6m4-10v14m0-7h7"/>',
  'wireless-transmitter': '<circle cx="17" cy="17" r="4"/><circle cx="17" cy="17" r="8"/><circle cx="17" cy="17" r="12"/>',
  'port-control': '<rect x="6" y="12" width="22" height="10" rx="5"/><path d="M11 17h12"/>',
  'dc-input': '<path d="M4 17h5m16 0h5M9 10v14h16V10Z"/>' + DIRECT(12, 16),
};

/** Stage kinds that have a drawing of their own; any other gets a plain block. */
export const DRAWN_STAGE_KINDS: readonly string[] = Object.keys(SHAPES);

/** Symbols of the named stage kinds, each once, to stand on a page before the first `stageGlyph`. */
export function stageSymbols(kinds: Iterable<string>): string {
  return [...new Set(kinds)]
    .map((kind) => `<symbol id="s-${escapeText(kind)}" viewBox="0 0 34 34">${FRAME}${SHAPES[kind] ?? '<path d="M6 17h22"/>'}</symbol>`)
    .join('');
}

/** The glyph of one stage kind; its name stands beside it, so it is hidden from readers of text. */
export function stageGlyph(kind: string): string {
  return `<svg class="g" aria-hidden="true"><use href="#s-${escapeText(kind)}"/></svg>`;
}

/** A chain of glyphs joined by short lines: a power path in a list row. */
export function glyphChain(kinds: readonly string[]): string {
  return `<span class="chain" aria-hidden="true">${kinds.map(stageGlyph).join('')}</span>`;
}
