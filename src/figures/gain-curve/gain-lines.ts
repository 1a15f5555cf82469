import { line } from 'd3-shape';
import { px } from '../markup.ts';
import type { GainFigure, GainPlace, GainSpan } from './gain-figure.ts';
import { shownPairs, type GainPlot } from './gain-plot.ts';

/** Spans that are drawn as a field and not as a line, in pixels. */
const FIELD_FROM = 2.5;

/** Everything that is drawn as a line: levels asked for, resonance, the given frequency, and the curves over them. */
export function gainLines(plot: GainPlot, figure: GainFigure): string {
  const { x, top, bottom, gains } = plot;
  const [first, ...others] = figure.loaded;
  const curve = (pairs: readonly GainPlace[], className: string): string => `<path class="${className}" d="${curvePath(plot, pairs)}"/>`;
  const running = figure.running === null ? '' : runningLine(plot, figure.running.span);
  return (
    figure.levels.map(({ gain }) => levelLine(plot, gain)).join('') +
    `<path class="centre" d="M${px(x(1))} ${top - 8}V${bottom}"/>` +
    running +
    curve(shownPairs(figure.noLoad, null, gains[1]), 'wide long-dash') +
    others.map(({ pairs, peak }) => curve(shownPairs(pairs, peak, gains[1]), 'med')).join('') +
    (first === undefined ? '' : curve(shownPairs(first.pairs, first.peak, gains[1]), 'wide'))
  );
}

function curvePath({ x, y }: GainPlot, pairs: readonly GainPlace[]): string {
  return line<GainPlace>(
    ([ratio]) => x(ratio),
    ([, gain]) => y(gain),
  ).digits(1)(pairs) ?? ''; // prettier-ignore
}

/** A thin line across the plot; a field between dashed edges where what is certain of it can be seen. */
function levelLine({ left, right, y }: GainPlot, { low, nominal, high }: GainSpan): string {
  const [upper, lower] = [y(high), y(low)];
  const field =
    lower - upper < FIELD_FROM
      ? ''
      : `<path class="interval-field" d="M${left} ${px(upper)}H${right}V${px(lower)}H${left}Z"/><path class="hidden-edge" d="M${left} ${px(upper)}H${right}M${left} ${px(lower)}H${right}"/>`;
  return `${field}<path class="thin" d="M${left} ${px(y(nominal))}H${right}"/>`;
}

function runningLine({ x, top, bottom, left, right }: GainPlot, span: GainSpan): string {
  const within = (ratio: number): number => Math.min(right, Math.max(left, x(ratio)));
  const [from, to] = [within(span.low), within(span.high)];
  if (to - from < FIELD_FROM) return `<path class="thin" d="M${px(within(span.nominal))} ${top}V${bottom}"/>`;
  return (
    `<path class="interval-field" d="M${px(from)} ${top}H${px(to)}V${bottom}H${px(from)}Z"/>` +
    `<path class="hidden-edge" d="M${px(from)} ${top}V${bottom}M${px(to)} ${top}V${bottom}"/>`
  );
}
