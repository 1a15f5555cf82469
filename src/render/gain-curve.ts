import type { PreparedSheet } from '../corpus/prepared.ts';
import type { StageGainCurve } from '../derived/derived.ts';
import { escapeText } from '../figures/markup.ts';
import { gainCurve } from '../figures/gain-curve/gain-curve.ts';
import type { GainFigure, GainLevel, GainMark } from '../figures/gain-curve/gain-figure.ts';
import type { GainPoint } from '../stages/models/stage-model.ts';
import { gainCurveTable } from '../tables/gain-curve.ts';
import { isMissing } from '../values/value.ts';
import { fold } from './fold.ts';
import { gainWords, givenNumbers, kilohertz, peakWords, plainRatio } from './gain-curve-words.ts';
import { tableView } from './table-view.ts';
import { withUnitsKept } from '../units/with-units-kept.ts';

/** The gain curve of each resonant stage whose tank is known, what it says in words, and the same as a table; empty where there is none. */
export function gainCurveView({ entry, derived, placed }: Pick<PreparedSheet, 'entry' | 'derived' | 'placed'>): string {
  const { gainCurves, stageVerdicts } = derived;
  if (gainCurves.length === 0) return '';
  const table = placed.includes(gainCurveTable.id) ? null : gainCurveTable.build({ entry, derived });
  const drawn = gainCurves.map((curve, index) => {
    const name = stageVerdicts.find(({ stage }) => stage === curve.stage)?.name;
    const head = `<figcaption><b class="mono">${escapeText(curve.stage)}</b> ${name === undefined ? '' : `${escapeText(name)}, `}gain of its resonant tank</figcaption>`;
    const figures = (['sheet', 'phone'] as const).map((layout) =>
      gainCurve(figureOf(curve, `gain-${String(index + 1)}-${layout}`, layout)),
    );
    return `<figure class="gain-of">${head}<div class="gain-and-words"><div>${figures.join('')}</div><div class="gain-words">${gainWords(curve)}</div></div></figure>`;
  });
  return drawn.join('') + (table === null ? '' : fold('The same as a table', tableView(table), 'gain-table'));
}

function figureOf(curve: StageGainCurve, id: string, layout: GainFigure['layout']): GainFigure {
  const { resonance, loaded, noLoad, points } = curve;
  const hertz = isMissing(resonance) ? 0 : resonance.nominal;
  const isOne = loaded.length < 2;
  return {
    id,
    layout,
    title: `Gain of the resonant tank of ${curve.stage} over frequency`,
    description: plainText(gainWords(curve)),
    resonance: { kilohertz: hertz / 1000, words: kilohertz(resonance) },
    loaded: loaded.map(({ name, pairs, peak }) => ({
      words: isOne || layout === 'phone' ? 'full load' : `full load ${name}`,
      ...{ pairs, peak, peakWords: peakWords(peak, resonance) },
    })),
    noLoad,
    levels: levelsOf(curve),
    marks: points.flatMap(markOf),
    running: runningOf(curve),
  };
}

/** Each gain that is asked for once: the corners, and the outputs between them at the highest bus. */
function levelsOf({ points, asked }: StageGainCurve): readonly GainLevel[] {
  const wanted = [...points.map(({ name, gain }) => ({ words: name, gain })), ...asked.map(({ name, gain }) => ({ words: withUnitsKept(name.replace(/^at /u, '')), gain }))]; // prettier-ignore
  const levels: GainLevel[] = [];
  for (const { words, gain } of wanted) {
    if (isMissing(gain) || levels.some((level) => level.gain.nominal === gain.nominal)) continue;
    levels.push({ words, number: plainRatio(gain), gain });
  }
  return levels;
}

function markOf({ load, gain, frequencyRatio, frequency }: GainPoint): readonly GainMark[] {
  if (isMissing(gain) || isMissing(frequencyRatio)) return [];
  return [{ isLoaded: load === 'full load', ratio: frequencyRatio, gain, words: kilohertz(frequency) }];
}

function runningOf({ running }: StageGainCurve): GainFigure['running'] {
  if (running === null) return null;
  const { ratio, frequency } = running;
  if (isMissing(frequency.highest) || isMissing(ratio.lowest) || isMissing(ratio.highest)) return null;
  const { evidence } = frequency.highest.origin;
  const nominal = (ratio.lowest.nominal + ratio.highest.nominal) / 2;
  return { span: { low: ratio.lowest.nominal, nominal, high: ratio.highest.nominal }, words: `${evidence} ${givenNumbers(frequency)}` };
}

/** The sentences without their markup, for readers of text. */
function plainText(html: string): string {
  return html
    .replace(/<\/p><p[^>]*>/gu, ' ')
    .replace(/<[^>]*>/gu, '')
    .replaceAll('&quot;', '"')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');
}
