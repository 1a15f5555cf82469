import { join } from 'node:path';
import { frameSize } from '../src/figures/photo-frame/frame-size.ts';
import type { DrawnLength } from '../src/figures/photo-frame/length-label.ts';
import { photoAround } from '../src/figures/photo-frame/photo-around.ts';
import { photoNear } from '../src/figures/photo-frame/photo-near.ts';
import { drawSheet } from '../src/render/draw-sheet.ts';
import { efficiencyZone } from '../src/render/efficiency-zone.ts';
import { gainCurveView } from '../src/render/gain-curve.ts';
import { offersView } from '../src/render/offers.ts';
import { outlineView } from '../src/render/outline.ts';
import { shareMatrixView } from '../src/render/port-shares.ts';
import { photosZone } from '../src/render/photos-zone.ts';
import { powerPathZone } from '../src/render/power-path.ts';
import { sheetScatter } from '../src/render/sheet-scatter.ts';
import { stressView } from '../src/render/stress.ts';
import type { PreparedSheet } from '../src/corpus/prepared.ts';
import { entriesIn } from '../tests/demo/entries-in.ts';
import { THIRTY_PARTS } from '../tests/figures/photo-frame/thirty-parts.ts';

/** Milliseconds within which a figure has to be drawn. */
const LIMIT = 1;
const RUNS = 60;

const sheets: readonly PreparedSheet[] = entriesIn(join(import.meta.dirname, '../demo/teardowns')).map(({ entry, derived }) => ({
  ...{ entry, derived, tables: [], placed: [], html: '', headings: [], diagnostics: [], photos: [] },
}));
const devices = Array.from({ length: 1000 }, (_, index) => ({
  ...{ slug: `d-${String(index)}`, name: `Device ${String(index)}`, kind: 'wall charger' },
  ...{ volume: 20 + ((index * 37) % 400), watts: 20 + ((index * 53) % 120) },
}));

const BOARD = frameSize({ width: 1600, height: 1000 });
const LENGTHS: readonly DrawnLength[] = [{ name: 'creepage T1', value: '6.4 mm', isScale: false, from: [0.5, 0.4], to: [0.56, 0.4] }];

const FIGURES: Readonly<Record<string, (sheet: PreparedSheet) => unknown>> = {
  outline: ({ entry }) => outlineView(entry),
  'power path': powerPathZone,
  'port shares': ({ entry, derived }) => (derived.shares === null ? '' : shareMatrixView(entry, derived.shares)),
  offers: ({ entry }) => offersView(entry),
  'efficiency, with its tables': efficiencyZone,
  stress: ({ derived }) => stressView(derived),
  'gain curve, with its table': gainCurveView,
  'scatter of 1000 devices': () => sheetScatter('d-0', devices),
  'photos, all of a sheet': photosZone,
  'photo of thirty parts, wide': () => photoAround(BOARD, THIRTY_PARTS, LENGTHS, 'parts'),
  'photo of thirty parts, phone': () => photoNear(BOARD.picture, THIRTY_PARTS, LENGTHS, 'parts'),
  'a whole sheet': drawSheet,
};

console.log(
  `Drawing one figure, median over ${String(sheets.length)} demo sheets and ${String(RUNS)} runs; limit ${String(LIMIT)} ms a figure`,
);
for (const [name, draw] of Object.entries(FIGURES)) {
  const times = Array.from({ length: RUNS }, () => {
    const start = performance.now();
    for (const sheet of sheets) draw(sheet);
    return (performance.now() - start) / sheets.length;
  }).sort((one, other) => one - other);
  const median = times[Math.floor(RUNS / 2)] ?? NaN;
  console.log(`${name.padEnd(28)} ${median.toFixed(2)} ms${name !== 'a whole sheet' && median > LIMIT ? ': TOO SLOW' : ''}`);
}
