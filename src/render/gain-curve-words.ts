import type { StageGainCurve } from '../derived/derived.ts';
import { escapeText } from '../figures/markup.ts';
import type { GainPair, GainPoint } from '../stages/models/stage-model.ts';
import { formatInterval } from '../units/format.ts';
import { isMissing, type Known, type Value } from '../values/value.ts';
import { fixedNumber } from './fixed-number.ts';
import { listed, sentence } from './words.ts';

/** What the figure shows, the number first. */
export function gainWords(curve: StageGainCurve): string {
  const { points, loaded, resonance } = curve;
  const [strongest] = loaded;
  const corners = cornersByName(points).map((pair) => cornerSentence(pair, curve)).join(''); // prettier-ignore
  const given = givenSentence(curve);
  const peak =
    strongest === undefined
      ? ''
      : `<p>The largest gain ${sentence(strongest.name)} is ${quantityHtml(peakWords(strongest.peak, resonance))}; below that frequency the half bridge loses its soft switching.</p>`;
  return `${corners}${given}${peak}<p class="note ruled">First-harmonic approximation from the tank and the turns: good near resonance, low below it. Wide line: full load; dashed: no load; circles and squares: where it works loaded and unloaded.</p>`;
}

/** "121 kHz, measured: there the curve at full load gives 1.01." */
function givenSentence({ running, loaded }: StageGainCurve): string {
  if (running === null || isMissing(running.frequency.highest) || isMissing(running.ratio.lowest) || isMissing(running.ratio.highest))
    return '';
  const pairs = loaded[0]?.pairs ?? [];
  const ends = [running.ratio.lowest, running.ratio.highest].map(({ nominal }) => gainAt(pairs, nominal));
  const shown = [...new Set(ends.map((gain) => (gain === null ? 'beyond the curve' : fixedNumber(gain, 2))))];
  return `<p>${quantityHtml(givenNumbers(running.frequency))}, ${running.frequency.highest.origin.evidence}: there the curve at full load gives ${quantityHtml(shown.join(' to '))}.</p>`;
}

/** Between two places of a curve; null outside of it. */
function gainAt(pairs: readonly GainPair[], ratio: number): number | null {
  const behind = pairs.findIndex(([at]) => at >= ratio);
  const [before, after] = [pairs[behind - 1], pairs[behind]];
  if (before === undefined || after === undefined) return null;
  return before[1] + ((ratio - before[0]) / (after[0] - before[0])) * (after[1] - before[1]);
}

interface CornerPair {
  readonly name: string;
  readonly gain: Known<'ratio'>;
  readonly loads: readonly GainPoint[];
}

function cornersByName(points: readonly GainPoint[]): readonly CornerPair[] {
  return [...Map.groupBy(points, ({ name }) => name)].flatMap(([name, loads]) => {
    const [first] = loads;
    return first === undefined ? [] : [{ name, gain: first.gain, loads }];
  });
}

/** "129 kHz loaded and 129 kHz unloaded give the gain of 0.99 for 20 V 5 A, bus 390 V." */
function cornerSentence({ name, gain, loads }: CornerPair, curve: StageGainCurve): string {
  if (isMissing(gain)) return `<p>The gain for ${sentence(name)} is not known: ${escapeText(gain.reason)}.</p>`;
  const found = loads.flatMap(({ load, frequency }) => (isMissing(frequency) ? [] : [`${quantityHtml(kilohertz(frequency))} at ${load}`]));
  const open = loads.filter(({ frequency }) => isMissing(frequency));
  const asks = `a gain of ${quantityHtml(plainRatio(gain))} for ${sentence(name)}`;
  const works = found.length === 0 ? '' : `${listed(found)} ${found.length === 1 ? 'gives' : 'give'} ${asks}.`;
  const missed = open.map(
    ({ load, frequency }) => `${load} ${whyOpen(frequency, gain, load === 'no load' ? curve.noLoad : (curve.loaded[0]?.pairs ?? []))}`,
  );
  const rest = missed.length === 0 ? '' : found.length === 0 ? `For ${asks}: ${missed.join('; ')}.` : ` ${missed.join('; ')}.`;
  return `<p>${works}${sentenceCase(rest)}</p>`;
}

/** Why a corner has no frequency: something is not known, or the gain lies above or below all that the tank has at this load. */
function whyOpen(frequency: Known<'frequency'>, gain: Value<'ratio'>, pairs: readonly GainPair[]): string {
  if (isMissing(frequency) && frequency.needs.length > 0) return `is not known: ${frequency.needs.join(', ')} missing`;
  if (gain.high > Math.max(...pairs.map(([, has]) => has))) return 'does not reach it: the largest gain of the tank is lower';
  if (gain.low < (pairs.at(-1)?.[1] ?? 0)) return 'stays above it at any frequency, so it has to skip cycles';
  return 'reaches it only within part of the tolerances';
}

function sentenceCase(text: string): string {
  return text.replace(/^ ?[a-z]/u, (letter) => letter.toUpperCase());
}

/** "2.3 at 49.2 kHz". */
export function peakWords([ratio, gain]: readonly [number, number], resonance: Known<'frequency'>): string {
  const number = gain < 10 ? gain.toFixed(gain < 2 ? 2 : 1) : String(Math.round(gain));
  if (isMissing(resonance)) return number;
  const at = ratio * resonance.nominal;
  return `${number} at ${kilohertz({ ...resonance, low: at, nominal: at, high: at, significant: 2 })}`;
}

/** Three digits where no interval says fewer: with two a resonance of 124 kHz would stand on the wrong side of 121. */
export function kilohertz(frequency: Known<'frequency'>): string {
  if (isMissing(frequency)) return 'not known';
  const significant = Math.max(3, frequency.significant);
  return `${formatInterval({ ...frequency, significant }, 'frequency', 'kHz').number}\u00a0kHz`;
}

/** "0.99". */
export function plainRatio(gain: Value<'ratio'>): string {
  return fixedNumber(gain.nominal, 2);
}

function quantityHtml(words: string): string {
  return `<span class="q">${escapeText(words)}</span>`;
}

/** "121 kHz", "110 to 180 kHz". */
export function givenNumbers({ lowest, highest }: NonNullable<StageGainCurve['running']>['frequency']): string {
  if (isMissing(lowest) || isMissing(highest)) return 'not known';
  const [from, to] = [lowest, highest].map((end) => formatInterval(end, 'frequency', 'kHz').number);
  return `${from === to ? '' : `${from ?? ''} to `}${to ?? ''}\u00a0kHz`;
}
