import { px } from './markup.ts';

/** One lettered device on a strip. */
export interface StripMark {
  readonly letter: string;
  readonly value: number;
  /** Interval, drawn as a bar on the line where the strip shows it. */
  readonly low: number;
  readonly high: number;
}

const STRIP_WIDTH = 176;
const INSET = 12;
const APART = 20;

/** Where lettered circles stand so that none covers another: each as near to its true place as the order allows. */
export function pushedApart(places: readonly number[], apart: number, from: number, to: number): readonly number[] {
  const order = places.map((place, index) => ({ place, index })).sort((one, other) => one.place - other.place || one.index - other.index);
  const placed = order.map(({ place }) => place);
  for (let at = 1; at < placed.length; at += 1) placed[at] = Math.max(placed[at] ?? 0, (placed[at - 1] ?? 0) + apart);
  const shift = shiftOf(placed, order.map(({ place }) => place), to); // prettier-ignore
  const pushed = placed.map((place) => Math.max(from, place - shift));
  for (let at = 1; at < pushed.length; at += 1) pushed[at] = Math.max(pushed[at] ?? 0, (pushed[at - 1] ?? 0) + apart);
  const result = places.map(() => 0);
  for (const [at, { index }] of order.entries()) result[index] = pushed[at] ?? 0;
  return result;
}

/** How far all of them go back after they were pushed to one side: the mean of what they moved, and at least what lies beyond the end. */
function shiftOf(placed: readonly number[], wanted: readonly number[], to: number): number {
  const moved = placed.reduce((sum, place, at) => sum + place - (wanted[at] ?? 0), 0) / Math.max(1, placed.length);
  return Math.max(moved, (placed.at(-1) ?? 0) - to, 0);
}

/** Ticks for all sheets on a line, lettered circles for the compared ones, pushed apart with a leader to the true place. */
export function placeStrip(all: readonly number[], marks: readonly StripMark[], isLogarithmic: boolean): string {
  const values = [...all, ...marks.map((mark) => mark.value)].filter((value) => Number.isFinite(value) && (!isLogarithmic || value > 0));
  const low = values.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY);
  const high = values.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
  const scale = isLogarithmic ? Math.log : (value: number): number => value;
  const span = scale(high) - scale(low);
  const x = (value: number): number => INSET + (span > 0 ? (scale(value) - scale(low)) / span : 0.5) * (STRIP_WIDTH - 2 * INSET);
  const ticks = [...new Set(all.filter((value) => !isLogarithmic || value > 0).map((value) => px(x(value))))];
  return strip(`<path class="thin" d="${ticks.map((place) => `M${place} 34v-5`).join('')}"/>`, marks, x);
}

/** Stress over rating of the compared devices on 0 to 1.1: bars over the intervals, a tick at 1.00. */
export function ratioStrip(marks: readonly StripMark[]): string {
  const x = (value: number): number => INSET + (Math.min(1.1, Math.max(0, value)) / 1.1) * (STRIP_WIDTH - 2 * INSET);
  const bars = marks.map(
    (mark) => `<rect class="b" x="${px(x(mark.low))}" y="30" width="${px(Math.max(1.5, x(mark.high) - x(mark.low)))}" height="4"/>`,
  );
  return strip(`${bars.join('')}<path class="thin" d="M${px(x(1))} 26v12"/>`, marks, x);
}

function strip(ground: string, marks: readonly StripMark[], x: (value: number) => number): string {
  const places = pushedApart(marks.map((mark) => x(mark.value)), APART, 10, STRIP_WIDTH - 10); // prettier-ignore
  const circles = marks.map((mark, index) => {
    const at = places[index] ?? 0;
    return `<path class="thin" d="M${px(at)} 19L${px(x(mark.value))} 34"/><circle class="letter" cx="${px(at)}" cy="10" r="9"/><text class="mid letter-text" x="${px(at)}" y="14.5">${mark.letter}</text>`;
  });
  return `<svg class="fig strip-fig" aria-hidden="true" width="${STRIP_WIDTH}" height="38" viewBox="0 0 ${STRIP_WIDTH} 38">${ground}<path class="thin" d="M${INSET - 6} 34.5H${STRIP_WIDTH - INSET + 6}"/>${circles.join('')}</svg>`;
}
