import { scaleLinear, scaleLog } from 'd3-scale';
import type { GainFigure, GainPlace, GainSpan } from './gain-figure.ts';

/** Edges of the figure and of its plot, in pixels. */
interface PlotEdges {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The plot: its edges, its scales, and the gain at which curves leave it at the top. */
export interface GainPlot extends PlotEdges {
  readonly x: (ratio: number) => number;
  readonly y: (gain: number) => number;
  readonly ratios: readonly [from: number, to: number];
  readonly gains: readonly [from: number, to: number];
  readonly gainTicks: readonly number[];
}

const EDGES: Readonly<Record<GainFigure['layout'], PlotEdges>> = {
  sheet: { width: 650, height: 384, left: 44, right: 412, top: 26, bottom: 306 },
  phone: { width: 320, height: 338, left: 36, right: 248, top: 26, bottom: 260 },
};

/** The part of the curves that matters: every corner and level with room, the peak where it is not far above them. */
export function gainPlot(figure: GainFigure): GainPlot {
  const edges = EDGES[figure.layout];
  const spans = [...figure.levels, ...figure.marks].map(({ gain }) => gain);
  const gains = gainEnds(figure, spans);
  const ratios = ratioEnds(figure, gains[1]);
  const y = scaleLinear([...gains], [edges.bottom, edges.top]);
  const x = scaleLog([...ratios], [edges.left, edges.right]);
  return { ...edges, x: (ratio) => x(ratio), y: (gain) => y(gain), ratios, gains, gainTicks: y.ticks(6) };
}

function gainEnds({ loaded, noLoad }: GainFigure, spans: readonly GainSpan[]): readonly [number, number] {
  const wanted = Math.max(1, ...spans.map(({ high }) => high));
  const largest = Math.max(...loaded.map(({ peak }) => peak[1]));
  const top = Math.max(1.15 * wanted, Math.min(1.08 * largest, 1.5 * wanted));
  const ends = [...loaded.map(({ pairs }) => pairs), noLoad].flatMap((pairs) => pairs.at(-1)?.[1] ?? []);
  const low = Math.min(1, ...ends, ...spans.map(({ low: least }) => least));
  return [Math.max(0, Math.floor(10 * low - 0.4) / 10), Math.ceil(10 * top) / 10];
}

function ratioEnds({ loaded }: GainFigure, top: number): readonly [number, number] {
  const shown = loaded.flatMap(({ pairs, peak }) => shownPairs(pairs, peak, top));
  const from = Math.min(0.9, ...shown.map(([ratio]) => ratio));
  const to = Math.max(...loaded.flatMap(({ pairs }) => pairs.at(-1)?.[0] ?? []));
  return [from * 0.97, to];
}

/**
 * What of a curve lies inside the plot. Where its peak does not, the branch below the peak is left out too: it would look like a curve
 * of its own. The curve is cut where it leaves the plot at the top.
 */
export function shownPairs(pairs: readonly GainPlace[], peak: GainPlace | null, top: number): readonly GainPlace[] {
  if (peak !== null && peak[1] <= top) return pairs;
  const behind = peak === null ? pairs : pairs.filter(([ratio]) => ratio >= peak[0]);
  const first = behind.findIndex(([, gain]) => gain <= top);
  if (first < 0) return [];
  const inside = behind.slice(first);
  const [before, after] = [behind[first - 1], behind[first]];
  if (before === undefined || after === undefined) return inside;
  const part = (before[1] - top) / (before[1] - after[1]);
  return [[before[0] * (after[0] / before[0]) ** part, top], ...inside];
}
