import { escapeText, px } from '../markup.ts';
import type { GainFigure } from './gain-figure.ts';
import { inOwnPlaces } from './own-places.ts';
import type { GainPlot } from './gain-plot.ts';
import type { LabelRoom } from './label-room.ts';

/** Least distance of two words at the right, in pixels. */
const APART = 18;

/** What each line at the right edge is: curves by their load, levels by their number and, on a sheet, who asks. Pushed apart, with leaders. */
export function endWords(plot: GainPlot, { loaded, noLoad, levels, layout }: GainFigure): string {
  const { right, top, bottom, y } = plot;
  const curves = [...loaded.map(({ words, pairs }) => ({ words, pairs })), { words: 'no load', pairs: noLoad }];
  const lines = [
    ...curves.flatMap(({ words, pairs }) => {
      const last = pairs.at(-1);
      return last === undefined ? [] : [{ at: y(last[1]), markup: escapeText(words) }];
    }),
    ...levels.map(({ words, number, gain }) => {
      const value = `<tspan class="num">${escapeText(number)}</tspan>`;
      return { at: y(gain.nominal), markup: layout === 'phone' ? value : `${value} ${escapeText(words)}` };
    }),
  ];
  const places = inOwnPlaces(lines.map(({ at }) => at), APART, top, bottom + 4); // prettier-ignore
  return lines
    .map(({ at, markup }, index) => {
      const place = places[index] ?? at;
      return `<path class="thin" d="M${right + 2} ${px(at)}L${right + 16} ${px(place)}"/><text x="${right + 20}" y="${px(place + 5)}">${markup}</text>`;
    })
    .join('');
}

/** Words on the two vertical lines: resonance above the plot, the given frequency at its foot on the side that is further from resonance. */
export function lineWords({ x, left, right, bottom }: GainPlot, { resonance, running }: GainFigure, room: LabelRoom): string {
  const at = x(1);
  const words = `resonance ${resonance.words}`;
  const head = `<text class="mid" x="${px(Math.min(right - 60, Math.max(left + 70, at)))}" y="12">${escapeText(words)}</text>`;
  if (running === null) return head;
  const place = Math.min(right, Math.max(left, x(running.span.nominal)));
  const [first, second] = running.span.nominal < 1 ? ([-8, 8] as const) : ([8, -8] as const);
  const spot = room.find(
    running.words,
    'sentence',
    [first, second].map((away) => ({ x: place + away, y: bottom - 10, anchor: away < 0 ? 'end' : 'start' }) as const),
  );
  return spot === null
    ? head
    : `${head}<text class="halo-text ${spot.anchor}" x="${px(spot.x)}" y="${px(spot.y)}">${escapeText(running.words)}</text>`;
}
