import { scaleLinear } from 'd3-scale';
import type { LogChannel, LogCurve, LogSummary } from '../logs/log-summary.ts';
import { numberInUnit } from '../tables/number-in-unit.ts';
import { displayUnit } from '../units/display-units.ts';
import { formatInterval } from '../units/format.ts';
import type { Value } from '../values/value.ts';
import { escapeText, percent, px } from './markup.ts';
import { timeAxis, type TimeAxis } from './time-axis.ts';
import { sentenceCase } from '../units/sentence-case.ts';

/** Height of one panel and of the room above and below its curve, in pixels; the width is that of the page. */
const [HEIGHT, TOP, BOTTOM] = [146, 48, 18];
/** The curve's own grid: whole numbers say where a point is to a fifth of a pixel, in few letters. */
const [ACROSS, DOWN] = [4000, 400];

/** Panels in the order in which they are of use; any other quantity follows. */
const ORDER = ['power', 'voltage', 'current', 'input power', 'input voltage', 'input current'];

/**
 * A log over time: one panel a quantity, all with one time axis, as wide as the page gives room. Both exact extremes of each are marked
 * with an open circle and their number; events that the author names stand as thin lines through all panels.
 */
export function logPlot(log: LogSummary, id: string): string {
  const axis = timeAxis(log.duration.nominal);
  const shown = log.curves.flatMap((curve) => {
    const channel = log.channels.find(({ quantity }) => quantity === curve.quantity);
    return channel === undefined || curve.dimension === 'energy' || curve.dimension === 'charge' ? [] : [{ curve, channel }];
  });
  const rank = ({ curve }: { readonly curve: LogCurve }): number => (ORDER.indexOf(curve.quantity) + ORDER.length + 1) % (ORDER.length + 1);
  const panels = shown.sort((one, other) => rank(one) - rank(other));
  const drawn = panels.map(({ curve, channel }, index) =>
    panel({ log, curve, channel, axis, id: `${id}-${index + 1}`, isFirst: index === 0, isLast: index === panels.length - 1 }),
  );
  return `<div class="log-plot">${drawn.join('')}</div>`;
}

interface Panel {
  readonly log: LogSummary;
  readonly curve: LogCurve;
  readonly channel: LogChannel;
  readonly axis: TimeAxis;
  readonly id: string;
  readonly isFirst: boolean;
  readonly isLast: boolean;
}

function panel(given: Panel): string {
  const { log, curve, channel, axis, id, isLast } = given;
  const unit = displayUnit(Math.max(...curve.points.map(([, value]) => Math.abs(value))), curve.dimension)?.symbol ?? '';
  const inUnit = (value: number): number => numberInUnit(value, curve.dimension, unit) ?? value;
  const [low, high] = ends(inUnit(channel.lowest.value.nominal), inUnit(channel.highest.value.nominal), curve.dimension);
  const y = scaleLinear([low, high], [HEIGHT - BOTTOM, TOP]);
  const name = sentenceCase(curve.quantity);
  const ticks = y.ticks(3);
  const grid = ticks.map((at) => `<line class="grid-line" x1="0" x2="100%" y1="${px(y(at))}" y2="${px(y(at))}"/>`).join('');
  const numbers = ticks.map(
    (at) =>
      `<path class="thin" d="M0 ${px(y(at))}h-5"/><text class="num end" x="-9" y="${px(y(at) + 5)}">${escapeText(y.tickFormat(3)(at))}</text>`,
  );
  const frame = `<line class="med" x1="0" x2="0" y1="${TOP - 26}" y2="${HEIGHT - BOTTOM}"/><line class="med" x1="0" x2="100%" y1="${HEIGHT - BOTTOM}" y2="${HEIGHT - BOTTOM}"/>`;
  const mark = ({ value, at }: LogChannel['lowest'], which: Extreme['which']): string => {
    const isOnZero = low === 0 && value.nominal === 0;
    return extreme({ value, unit, which, fraction: at / axis.end, y: y(inUnit(value.nominal)), isOnZero, isLast });
  };
  const marks = [mark(channel.highest, 'highest'), mark(channel.lowest, 'lowest')];
  const height = isLast ? HEIGHT + 40 : HEIGHT;
  return (
    `<svg class="fig log-panel" role="img" aria-labelledby="${id}-t ${id}-d" height="${height}" width="100%">` +
    `<title id="${id}-t">${escapeText(`${name} in ${unit} over time, log ${log.id}`)}</title><desc id="${id}-d">${escapeText(described(channel, axis))}</desc>` +
    grid +
    eventLines(given) +
    trace(curve, axis, (value) => y(inUnit(value))) +
    frame +
    numbers.join('') +
    `<text x="7" y="14">${escapeText(`${name.toLowerCase()}, ${unit}`)}</text>` +
    marks.join('') +
    timeTicks(axis, isLast) +
    '</svg>'
  );
}

/** Whole of the axis: from zero where the curve comes near it, else with room on both sides. Temperatures have no such zero. */
function ends(low: number, high: number, dimension: LogCurve['dimension']): readonly [number, number] {
  const span = high - low || Math.abs(high) * 0.1 || 1;
  if (dimension !== 'temperature' && low >= 0 && low < 0.5 * high) return [0, high];
  return [low - 0.45 * span, high + 0.1 * span];
}

/** The curve on a grid of its own, stretched to the panel; the width of its line is not. */
function trace(curve: LogCurve, axis: TimeAxis, y: (value: number) => number): string {
  let last: readonly [number, number] | null = null;
  const steps = curve.points.map(([at, value]) => {
    const here = [Math.round((at / axis.end) * ACROSS), Math.round((y(value) / HEIGHT) * DOWN)] as const;
    const step: string = last === null ? `M${here[0]} ${here[1]}l` : `${here[0] - last[0]} ${here[1] - last[1]} `;
    last = here;
    return step;
  });
  const path = `<path class="wide trace" d="${steps.join('').trim()}"/>`;
  return `<svg x="0" y="0" width="100%" height="${HEIGHT}" viewBox="0 0 ${ACROSS} ${DOWN}" preserveAspectRatio="none">${path}</svg>`;
}

interface Extreme {
  readonly value: Value;
  readonly unit: string;
  readonly which: 'highest' | 'lowest';
  readonly fraction: number;
  readonly y: number;
  readonly isOnZero: boolean;
  readonly isLast: boolean;
}

/** An open circle at an exact extreme and its number, which goes to whichever side has room. */
function extreme({ value, unit, which, fraction, y, isOnZero, isLast }: Extreme): string {
  const circle = `<circle class="extreme" cx="${percent(fraction)}" cy="${px(y)}" r="4"/>`;
  // On the zero line the axis says it already.
  if (isOnZero) return circle;
  const foot = HEIGHT - BOTTOM;
  const hasRoomBelow = y + 18 <= foot - 2;
  // Close above the axis it stands below it, save in the last panel, whose axis has numbers there.
  const baseline = which === 'highest' || (!hasRoomBelow && isLast) ? y - 9 : hasRoomBelow ? y + 18 : foot + 16;
  const anchor = fraction < 0.08 ? 'start' : fraction > 0.92 ? 'end' : 'mid';
  const beside = anchor === 'start' ? 4 : anchor === 'end' ? -4 : 0;
  const words = escapeText(formatInterval(value, value.dimension, unit).number);
  return `${circle}<text class="num halo-text ${anchor}" x="${percent(fraction)}" dx="${beside}" y="${px(baseline)}">${words}</text>`;
}

function eventLines({ log, axis, isFirst }: Panel): string {
  return log.steps
    .filter(({ event }) => event !== null)
    .map(({ at, event }) => {
      const x = percent(at / axis.end);
      const words = isFirst
        ? `<text class="${at / axis.end > 0.6 ? 'end' : 'start'}" x="${x}" y="14">${escapeText(event ?? '')}</text>`
        : '';
      return `<line class="hidden-edge" x1="${x}" x2="${x}" y1="${TOP - 28}" y2="${HEIGHT - BOTTOM}"/>${words}`;
    })
    .join('');
}

function timeTicks({ ticks, end, unit }: TimeAxis, isLast: boolean): string {
  const foot = HEIGHT - BOTTOM;
  const marks = ticks.map(({ at, words }) => {
    const x = percent(at / end);
    const number = isLast ? `<text class="num mid" x="${x}" y="${foot + 22}">${words}</text>` : '';
    return `<line class="thin" x1="${x}" x2="${x}" y1="${foot}" y2="${foot + 5}"/>${number}`;
  });
  return marks.join('') + (isLast ? `<text class="end" x="100%" y="${foot + 42}">time, ${unit}</text>` : '');
}

function described({ mean, lowest, highest }: LogChannel, { unit }: TimeAxis): string {
  const words = (value: Value): string => formatInterval(value, value.dimension).text;
  const when = (at: number): string => formatInterval({ low: at, nominal: at, high: at, significant: 3 }, 'time', unit).text;
  return `Mean ${words(mean)}; lowest ${words(lowest.value)} at ${when(lowest.at)}, highest ${words(highest.value)} at ${when(highest.at)}. The table below has the numbers.`;
}
