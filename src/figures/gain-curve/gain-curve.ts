import { figure } from '../markup.ts';
import { gainAxes } from './gain-axes.ts';
import type { GainFigure } from './gain-figure.ts';
import { gainLines } from './gain-lines.ts';
import { gainMarks } from './gain-marks.ts';
import { gainPlot, shownPairs, type GainPlot } from './gain-plot.ts';
import { endWords, lineWords } from './gain-words.ts';
import { labelRoom, type LabelRoom } from './label-room.ts';

/**
 * Gain of a resonant tank over frequency: wide at full load, thinner at the full load of the weakest output, long dashes without load;
 * thin lines across are the gains that the outputs ask for, marks the corners at which the tank works.
 */
export function gainCurve(input: GainFigure): string {
  const plot = gainPlot(input);
  const { left, right, top, bottom, width, height } = plot;
  const room = labelRoom({ x: left + 2, y: top - 10, width: right - left - 4, height: bottom - top + 10 });
  const words = lineWords(plot, input, room);
  takeLines(plot, input, room);
  return figure({
    id: input.id,
    className: `fig gain-fig gain-${input.layout}`,
    width,
    height,
    title: input.title,
    description: input.description,
    body: gainAxes(plot, input) + gainLines(plot, input) + words + gainMarks(plot, input, room) + endWords(plot, input),
  });
}

/** Words of marks keep off the levels and the curves: a line through a number is read as its stroke. */
function takeLines({ left, right, x, y, gains }: GainPlot, { levels, loaded, noLoad }: GainFigure, room: LabelRoom): void {
  for (const { gain } of levels) room.take({ x: left, y: y(gain.nominal) - 1, width: right - left, height: 2 });
  const curves = [...loaded.map(({ pairs, peak }) => shownPairs(pairs, peak, gains[1])), shownPairs(noLoad, null, gains[1])];
  for (const [ratio, gain] of curves.flat()) room.take({ x: x(ratio) - 3, y: y(gain) - 3, width: 6, height: 6 });
}
