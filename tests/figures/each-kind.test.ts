import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { efficiencyCurve } from '../../src/figures/efficiency-curve.ts';
import { familyStrip, familyStripAxis } from '../../src/figures/family-strip.ts';
import { finderScatter } from '../../src/figures/finder-scatter.ts';
import { gainCurve } from '../../src/figures/gain-curve/gain-curve.ts';
import type { GainFigure } from '../../src/figures/gain-curve/gain-figure.ts';
import { logPlot } from '../../src/figures/log-plot.ts';
import { mark } from '../../src/figures/mark.ts';
import { miniFront } from '../../src/figures/mini-front.ts';
import { offersOverlay } from '../../src/figures/offers-overlay.ts';
import { outlineDrawing } from '../../src/figures/outline-drawing.ts';
import { frameSize } from '../../src/figures/photo-frame/frame-size.ts';
import type { DrawnLength } from '../../src/figures/photo-frame/length-label.ts';
import { photoAround } from '../../src/figures/photo-frame/photo-around.ts';
import { photoNear } from '../../src/figures/photo-frame/photo-near.ts';
import { photoOver } from '../../src/figures/photo-frame/photo-over.ts';
import { placeStrip, ratioStrip } from '../../src/figures/place-strip.ts';
import { rangeFigure } from '../../src/figures/range-figure.ts';
import { shareBar } from '../../src/figures/share-bar.ts';
import { silhouette } from '../../src/figures/silhouette.ts';
import { stageGlyph, DRAWN_STAGE_KINDS } from '../../src/figures/stage-glyph.ts';
import { stressBar } from '../../src/figures/stress-bar.ts';
import { spreadParts, THIRTY_PARTS } from './photo-frame/thirty-parts.ts';
import { foldBackLog } from '../logs/a-log-summary.ts';

const PORTS = [
  { id: 'C1', connector: 'USB-C' },
  { id: 'A1', connector: 'USB-A' },
  { id: 'DC', connector: 'barrel' },
] as const;
const edge = (mm: number) => ({ mm, text: String(mm), tolerance: '±0.3' });
const ratio = (low: number, nominal: number, high: number) => ({ low, nominal, high });

const SCATTER = [
  { name: 'Nub 20', kind: 'wall charger', volume: 27, watts: 20, isFound: true },
  { name: 'Causeway 100', kind: 'desktop charger', volume: 156, watts: 100, isFound: true },
  { name: 'Fairlead 92', kind: 'car charger', volume: 73, watts: 92, isFound: false },
  { name: 'Bothy 45', kind: 'power bank', volume: 157, watts: 45, isFound: false },
];

const certain = (share: number, at: number, spread = 0) => ({ share, low: at - spread, nominal: at, high: at + spread, open: null });
const EFFICIENCY: Parameters<typeof efficiencyCurve>[0] = {
  id: 'e',
  title: 'Efficiency of C1 at 20 V over load',
  description: 'Means: 230 V 91.0 %, 115 V not known.',
  series: [
    { label: '230 V', isFilled: true, points: [certain(0.25, 0.893, 0.006), certain(0.5, 0.912, 0.004), certain(1, 0.919)] },
    { label: '115 V', isFilled: false, points: [certain(0.25, 0.896), { share: 1, low: 0.9, nominal: 0.9, high: 0.9, open: 'above' }] },
  ],
  limits: [
    { label: 'limit 88.0', value: 0.88, of: 'average', fullLoad: 1 },
    { label: 'limit 79.0', value: 0.79, of: 'a tenth of the load', fullLoad: 1 },
  ],
};

const tank = (ratios: readonly number[], gains: readonly number[]) => ratios.map((at, index) => [at, gains[index] ?? 1] as const);
const GAIN: Omit<GainFigure, 'layout'> = {
  id: 'g',
  title: 'Gain of the resonant tank of main over frequency',
  description: '122 kHz at full load and 123 kHz at no load.',
  resonance: { kilohertz: 110, words: '110 kHz' },
  loaded: [
    {
      words: 'full load at 20 V 5 A',
      pairs: tank([0.5, 0.6, 0.8, 1, 1.4, 2], [1.1, 1.3, 1.2, 1, 0.82, 0.68]),
      ...{ peak: [0.6, 1.3], peakWords: '1.30 at 66 kHz' },
    },
    {
      words: 'full load at 15 V 3 A',
      pairs: tank([0.4, 0.5, 0.8, 1, 1.4, 2], [1.9, 2.4, 1.3, 1, 0.85, 0.75]),
      ...{ peak: [0.5, 2.4], peakWords: '2.4 at 55 kHz' },
    },
  ],
  noLoad: tank([0.45, 0.5, 0.8, 1, 1.4, 2], [9, 3, 1.35, 1, 0.88, 0.82]),
  levels: [
    { words: '20 V 5 A, bus 390 V', number: '0.92', gain: ratio(0.9, 0.92, 0.94) },
    { words: '15 V 3 A, bus 390 V', number: '0.69', gain: ratio(0.69, 0.69, 0.69) },
  ],
  marks: [
    { isLoaded: true, ratio: ratio(1.1, 1.16, 1.24), gain: ratio(0.9, 0.92, 0.94), words: '128 kHz' },
    { isLoaded: false, ratio: ratio(1.2, 1.23, 1.3), gain: ratio(0.9, 0.92, 0.94), words: '135 kHz' },
    { isLoaded: true, ratio: ratio(2.6, 2.65, 2.7), gain: ratio(0.69, 0.69, 0.69), words: '292 kHz' },
  ],
  running: { span: ratio(0.9, 1.2, 1.5), words: 'measured 99 to 165 kHz' },
};

const CALLOUTS = [
  { number: 3, reference: 'F1', x: 0.12, y: 0.3 },
  { number: 7, reference: 'C5', x: 0.4, y: 0.62 },
  { number: 9, reference: 'T1', x: 0.583, y: 0.375 },
  { number: 12, reference: 'J1', x: 0.93, y: 0.5 },
].map(({ number, reference, x, y }) => ({
  ...{ number, x, y, title: reference },
  rowAnchor: `part-${reference}`,
  anchor: `photo-1-part-${reference}`,
}));
const LENGTHS: readonly DrawnLength[] = [{ name: 'creepage T1', value: '6.4 mm', isScale: false, from: [0.5, 0.4], to: [0.56, 0.4] }];
const PHOTO = frameSize({ width: 2400, height: 1800 });

/** One of each kind of figure, from numbers that no change of an entry moves. */
const KINDS: Readonly<Record<string, () => string>> = {
  'callouts around a photo': () => photoAround(PHOTO, CALLOUTS, LENGTHS, 'Photo 1: parts by number'),
  'callouts on a photo of a phone': () => photoNear(PHOTO.picture, CALLOUTS, LENGTHS, 'Photo 1: parts by number').svg,
  'thirty callouts around a photo': () => photoAround(PHOTO, THIRTY_PARTS, LENGTHS, 'Photo 1: parts by number'),
  'thirty callouts on a photo of a phone': () => photoNear(PHOTO.picture, THIRTY_PARTS, LENGTHS, 'Photo 1: parts by number').svg,
  'fifty callouts on a photo of a phone': () => photoNear(PHOTO.picture, spreadParts(50), LENGTHS, 'Photo 1: parts by number').svg,
  'zones and a length on a photo': () => photoOver('photo-1', CALLOUTS, LENGTHS),
  'outline of a box': () =>
    outlineDrawing({
      id: 'o',
      name: 'Quadra',
      body: { shape: 'box', length: edge(71), width: edge(58), height: edge(34) },
      ports: PORTS,
      layout: 'sheet',
    }).svg,
  'outline of a cylinder on a phone': () =>
    outlineDrawing({
      id: 'o',
      name: 'Quadra',
      body: { shape: 'cylinder', diameter: edge(30), height: edge(64) },
      ports: PORTS,
      layout: 'phone',
    }).svg,
  'stress within, with its interval': () => stressBar({ ratio: ratio(0.55, 0.62, 0.7), limit: 0.8, verdict: 'within' }),
  'stress over': () => stressBar({ ratio: ratio(0.93, 0.93, 0.93), limit: 0.9, verdict: 'over' }),
  'stress withheld': () => stressBar({ ratio: null, limit: 0.8, verdict: 'withheld' }),
  'share measured': () => shareBar({ fraction: 0.65, tick: 1, style: 'filled' }),
  'share printed': () => shareBar({ fraction: 0.65, tick: 1, style: 'open' }),
  'share implied by symmetry': () => shareBar({ fraction: 0.3, tick: 0.3, style: 'dashed' }),
  'scatter of power over volume': () =>
    finderScatter(SCATTER, { volume: { low: 40, high: 170 }, watts: null }, [640, 360], { id: 's', description: '2 of 4' }),
  'offers of two devices': () =>
    offersOverlay(
      [
        { letter: 'A', name: 'Nub 20', offers: [{ kind: 'fixed', volts: 5, amps: 3 }, { kind: 'fixed', volts: 9, amps: 2.22 }] },
        { letter: 'B', name: 'Trine 65', offers: [{ kind: 'fixed', volts: 5, amps: 3 }, { kind: 'fixed', volts: 20, amps: 3.25 }] },
      ],
      560,
    ), // prettier-ignore
  'efficiency over load with its limits': () => efficiencyCurve(EFFICIENCY),
  'gain of a resonant tank': () => gainCurve({ ...GAIN, layout: 'sheet' }),
  'gain of a resonant tank on a phone': () => gainCurve({ ...GAIN, layout: 'phone' }),
  'log that folds back': () => logPlot(foldBackLog({ events: { '10 min': 'fold-back' } }), 'l'),
  'places among all': () => placeStrip([0.3, 0.4, 0.5, 0.64, 0.9], [{ letter: 'A', value: 0.5, low: 0.48, high: 0.52 }], true),
  'ratios side by side': () =>
    ratioStrip([
      { letter: 'A', value: 0.62, low: 0.55, high: 0.7 },
      { letter: 'B', value: 0.63, low: 0.63, high: 0.63 },
    ]),
  'stresses of a family': () =>
    familyStrip({ marks: [0.5, 0.62, 0.62, 0.93].map((each) => ({ ratio: each, verdict: each > 0.9 ? 'over' : 'within' })), limit: 0.9 }) +
    familyStripAxis(),
  'range on its spread': () => rangeFigure([1, 4, 9, 6, 2, 0, 1], 0.2, 0.7, 300),
  'front with a used port': () => miniFront(PORTS, ['C1']),
  'front to scale': () => silhouette({ length: 71, height: 34 }, 0.6, 92, 26),
  'marks of judgement': () => (['within', 'straddles', 'over', 'withheld'] as const).map(mark).join(''),
  'glyphs of the stages': () => DRAWN_STAGE_KINDS.map(stageGlyph).join('\n'),
};

describe('each kind of figure', () => {
  test.each(Object.entries(KINDS))('%s is drawn as before', async (name, draw) => {
    const drawn = draw();
    expect(drawn).not.toMatch(/NaN|Infinity|undefined|style=/u);
    await expect(`${drawn.replaceAll('><', '>\n<')}\n`).toMatchFileSnapshot(
      join(import.meta.dirname, 'drawn', `${name.replaceAll(/[ ,]+/g, '-')}.svg`),
    );
  });
});
