import { escapeText, px } from '../markup.ts';
import type { GainFigure, GainMark } from './gain-figure.ts';
import type { GainPlot } from './gain-plot.ts';
import type { LabelRoom } from './label-room.ts';

/** Whiskers shorter than the mark itself are left out. */
const WHISKER_FROM = 12;

/** Marks nearer to each other than this have one number, that of the first, in pixels. */
const TOGETHER = 7;

/** Marks nearer to each other than this have their numbers on the sides that they turn away from each other, in pixels. */
const BESIDE = 78;

/** Corners at which the tank works: filled circles at full load, open squares without, so that both show where they fall together. */
export function gainMarks(plot: GainPlot, { marks, loaded }: GainFigure, room: LabelRoom): string {
  const placed = marks.map((mark) => ({ mark, ...placeOf(plot, mark) }));
  for (const { x, y } of placed) room.take({ x: x - 6, y: y - 6, width: 12, height: 12 });
  const own = placed.filter(({ x, y }, index) => !placed.slice(0, index).some((other) => Math.hypot(other.x - x, other.y - y) < TOGETHER));
  const whiskers = placed.map(({ mark, isBeyond }) => (isBeyond ? '' : whisker(plot, mark))).join('');
  const open = placed.filter(({ mark }) => !mark.isLoaded);
  const filled = placed.filter(({ mark }) => mark.isLoaded);
  const peaks = loaded.map(({ peak, peakWords }) => peakTick(plot, peak, peakWords, room)).join('');
  return (
    peaks +
    (whiskers === '' ? '' : `<path class="thin" d="${whiskers}"/>`) +
    open.map(({ x, y, isBeyond }) => (isBeyond ? arrow(x, y) : openSquare(x, y))).join('') +
    filled
      .map(({ x, y, isBeyond }) => (isBeyond ? arrow(x, y) : `<circle class="point-in" cx="${px(x)}" cy="${px(y)}" r="3.5"/>`))
      .join('') +
    own
      .map(({ mark, x, y }) => {
        const beside = own.find((other) => other.x !== x && Math.abs(other.x - x) < BESIDE && Math.abs(other.y - y) < BESIDE / 3);
        return markWords(mark.words, { x, y, away: beside === undefined ? null : beside.x > x ? 'left' : 'right' }, room);
      })
      .join('')
  );
}

interface MarkPlace {
  readonly x: number;
  readonly y: number;
  /** It works beyond the end of the axis. */
  readonly isBeyond: boolean;
}

function placeOf({ x, y, right, ratios }: GainPlot, { ratio, gain }: GainMark): MarkPlace {
  const isBeyond = ratio.nominal > ratios[1];
  return { x: isBeyond ? right : x(ratio.nominal), y: y(gain.nominal), isBeyond };
}

function openSquare(x: number, y: number): string {
  return `<rect class="point-open" x="${px(x - 5.5)}" y="${px(y - 5.5)}" width="11" height="11"/>`;
}

function arrow(x: number, y: number): string {
  return `<path class="solid" d="M${px(x)} ${px(y)}l-9 -3.6v7.2Z"/>`;
}

function whisker({ x, y, left, right }: GainPlot, { ratio, gain }: GainMark): string {
  const [across, up] = [x(ratio.nominal), y(gain.nominal)];
  const [from, to] = [Math.max(left, x(ratio.low)), Math.min(right, x(ratio.high))];
  const [upper, lower] = [y(gain.high), y(gain.low)];
  const wide = to - from < WHISKER_FROM ? '' : `M${px(from)} ${px(up)}H${px(to)}M${px(from)} ${px(up - 4)}v8M${px(to)} ${px(up - 4)}v8`;
  const tall =
    lower - upper < WHISKER_FROM
      ? ''
      : `M${px(across)} ${px(upper)}V${px(lower)}M${px(across - 4)} ${px(upper)}h8M${px(across - 4)} ${px(lower)}h8`;
  return wide + tall;
}

/** The largest gain, where it lies inside the plot: below it the bridge loses its soft switching. */
function peakTick({ x, y, gains }: GainPlot, [ratio, gain]: readonly [number, number], words: string, room: LabelRoom): string {
  if (gain > gains[1]) return '';
  const [across, up] = [x(ratio), y(gain)];
  const spot = room.find(`peak ${words}`, 'sentence', [
    { x: across, y: up - 13, anchor: 'mid' },
    { x: across + 6, y: up - 13, anchor: 'end' },
    { x: across - 6, y: up - 13, anchor: 'start' },
    { x: across, y: up + 20, anchor: 'mid' },
  ]);
  const text =
    spot === null ? '' : `<text class="halo-text ${spot.anchor}" x="${px(spot.x)}" y="${px(spot.y)}">peak ${escapeText(words)}</text>`;
  return `<path class="thin" d="M${px(across)} ${px(up - 2)}v-8"/>${text}`;
}

/**
 * The frequency of a corner beside it, on the first side that is free; the table has it in any case. Beside a neighbour only on the side
 * away from it, so that no number reads as the neighbour's.
 */
function markWords(
  words: string,
  { x, y, away }: { readonly x: number; readonly y: number; readonly away: 'left' | 'right' | null },
  room: LabelRoom,
): string {
  const spots = [
    { x: x + 9, y: y - 9, anchor: 'start' },
    { x: x - 9, y: y + 19, anchor: 'end' },
    { x: x - 9, y: y - 9, anchor: 'end' },
    { x: x + 9, y: y + 19, anchor: 'start' },
  ] as const;
  const unwanted = away === 'left' ? 'start' : 'end';
  const spot = room.find(
    words,
    'number',
    spots.filter(({ anchor }) => away === null || anchor !== unwanted),
  );
  return spot === null ? '' : `<text class="num halo-text ${spot.anchor}" x="${px(spot.x)}" y="${px(spot.y)}">${escapeText(words)}</text>`;
}
