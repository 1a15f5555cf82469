import { px } from '../markup.ts';
import type { GainFigure } from './gain-figure.ts';
import type { GainPlot } from './gain-plot.ts';

/** Frequencies over resonance that may stand at the axis, those of most use first. */
const RATIOS = [1, 0.5, 2, 0.7, 1.5, 3, 0.3, 5, 0.4, 4, 0.6, 0.8, 1.2, 0.2, 0.9] as const;
/** The same for kilohertz, times any power of ten. */
const STEPS = [1, 2, 5, 1.5, 3, 7, 4, 6, 8] as const;
/** Least distance of two numbers at an axis, in pixels. */
const APART = 36;
/** The axis in kilohertz below the one over resonance, in pixels. */
const SECOND = 34;

/** Axes with their numbers: gain upwards; frequency over resonance, and under it the same in kHz with its own round numbers. */
export function gainAxes(plot: GainPlot, { resonance: { kilohertz } }: GainFigure): string {
  const { left, right, top, bottom, x, y, gainTicks, gains } = plot;
  const inside = gainTicks.filter((gain) => gain > gains[0]);
  const decimals = gainTicks.every((gain) => Math.abs(gain * 10 - Math.round(gain * 10)) < 1e-6) ? 1 : 2;
  return (
    `<path class="grid-line" d="${inside.map((gain) => `M${left} ${px(y(gain))}H${right}`).join('')}"/>` +
    `<path class="med" d="M${left} ${top}V${bottom}H${right}"/>` +
    `<path class="thin" d="${gainTicks.map((gain) => `M${left} ${px(y(gain))}h-5`).join('')}"/>` +
    gainTicks.map((gain) => `<text class="num end" x="${left - 8}" y="${px(y(gain) + 5)}">${gain.toFixed(decimals)}</text>`).join('') +
    numbered(spread(plot, RATIOS, 1), x, bottom) +
    `<path class="thin" d="M${left} ${bottom + SECOND}H${right}"/>` +
    numbered(kilohertzTicks(plot, kilohertz), (value) => x(value / kilohertz), bottom + SECOND) +
    `<text x="0" y="12">gain</text><text class="end" x="${right}" y="${bottom + SECOND + 41}">frequency over resonance, and in kHz</text>`
  );
}

function numbered(values: readonly number[], x: (value: number) => number, y: number): string {
  const ticks = `<path class="thin" d="${values.map((value) => `M${px(x(value))} ${y}v5`).join('')}"/>`;
  return ticks + values.map((value) => `<text class="num mid" x="${px(x(value))}" y="${y + 21}">${String(value)}</text>`).join('');
}

function kilohertzTicks(plot: GainPlot, kilohertz: number): readonly number[] {
  if (!(kilohertz > 0)) return [];
  const decade = 10 ** Math.floor(Math.log10(plot.ratios[0] * kilohertz));
  const candidates = STEPS.flatMap((step) => [decade, 10 * decade, 100 * decade].map((by) => Number((step * by).toPrecision(2))));
  return spread(plot, candidates, kilohertz);
}

/** Of the candidates, in their order, those inside the axis and not too near to one that stands already. */
function spread({ x, ratios: [from, to] }: GainPlot, candidates: readonly number[], whole: number): readonly number[] {
  const chosen: number[] = [];
  for (const value of candidates) {
    const ratio = value / whole;
    const isInside = ratio >= from && ratio <= to;
    if (isInside && chosen.every((other) => Math.abs(x(other / whole) - x(ratio)) >= APART)) chosen.push(value);
  }
  return chosen.sort((one, other) => one - other);
}
