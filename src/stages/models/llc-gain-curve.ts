import { frequencyOfLargestGain } from '../../formulas/llc-largest-gain-frequency.ts';
import { llcFrequencyRatio } from '../../formulas/llc/llc-frequency-ratio.ts';
import { llcGain } from '../../formulas/llc/llc-gain.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { llcGainPoints } from './llc-gain-points.ts';
import { atOutput, gainFor, outerPoints, tankOf, type Tank } from './llc-tank.ts';
import type { GainCurve, GainPair, GainPoint, LoadedCurve, StageGiven } from './stage-model.ts';

/** Places of a curve, evenly on a logarithmic scale. */
const PLACES = 48;
/** Every curve reaches twice the resonance, and further where the tank has to work beyond, up to this. */
const [REACH, FURTHEST] = [2, 5] as const;

/**
 * Gain over frequency by the first-harmonic approximation, at full load and with none, and what the outputs ask for.
 * Null where Lr, Cr, Lm or the turns are not known.
 */
export function llcGainCurve(given: StageGiven): GainCurve | null {
  const tank = tankOf(given);
  if (isMissing(tank.resonance) || isMissing(tank.inductanceRatio)) return null;
  const { nominal: inductanceRatio } = tank.inductanceRatio;
  // The curves are drawn by the turns ratio, as the gains that the outputs ask for.
  const transformer = tank.transformerGain === null || isMissing(tank.transformerGain) ? 1 : tank.transformerGain.nominal;
  const gainAt = (quality: number, ratio: number): number =>
    transformer * llcGain.compute({ inductanceRatio, quality, frequencyRatio: ratio });
  const loads = loadsOf(given, tank, inductanceRatio);
  if (loads.length === 0) return null;
  const points = llcGainPoints(given, tank);
  const places = placesOf(
    loads.map(({ peak }) => peak),
    points,
  );
  const pole = 1 / Math.sqrt(inductanceRatio + 1);
  const curve = (quality: number, from: number): readonly GainPair[] =>
    places.filter((ratio) => ratio > from).map((ratio) => [ratio, gainAt(quality, ratio)] as const);
  return {
    resonance: tank.resonance,
    loaded: loads.map(({ name, quality, peak }): LoadedCurve => ({
      name,
      pairs: curve(quality, 0),
      peak: [peak, gainAt(quality, peak)],
    })),
    noLoad: curve(0, pole),
    asked: given.output.points.map((point) => ({ name: atOutput(point), gain: gainFor(given, point) })),
    points,
    running: runningOf(given, tank),
  };
}

interface Load {
  readonly name: string;
  readonly quality: number;
  readonly peak: number;
}

/** The outer outputs at their full load, the highest first. */
function loadsOf(given: StageGiven, tank: Tank, inductanceRatio: number): readonly Load[] {
  return outerPoints(given.output.points)
    .toReversed()
    .flatMap((point): Load[] => {
      const quality = tank.quality(point);
      if (isMissing(quality)) return [];
      const peak = frequencyOfLargestGain(inductanceRatio, quality.nominal);
      return [{ name: atOutput(point), quality: quality.nominal, peak }];
    });
}

/** From a little below the lowest peak to beyond the last corner; resonance and the peaks are among them. */
function placesOf(peaks: readonly number[], points: readonly GainPoint[]): readonly number[] {
  const corners = points.flatMap(({ frequencyRatio }) => (isMissing(frequencyRatio) ? [] : [frequencyRatio.high]));
  const from = 0.85 * Math.min(...peaks);
  const to = Math.min(FURTHEST, Math.max(REACH, 1.15 * Math.max(0, ...corners)));
  const even = Array.from({ length: PLACES + 1 }, (_, index) => from * (to / from) ** (index / PLACES));
  return [...new Set([...even, ...peaks, 1])].sort((one, other) => one - other);
}

/** The given switching frequency and its ratio to the resonance, at both of its ends. */
function runningOf(given: StageGiven, { resonance }: Tank): GainCurve['running'] {
  const [lowest, highest] = [given.parameter('frequency', 'frequency', 'low'), given.parameter('frequency', 'frequency', 'high')];
  if (lowest === null || highest === null) return null;
  const ratio = (frequency: Known<'frequency'>): Known<'ratio'> => applyFormula(llcFrequencyRatio, { frequency, resonance });
  return { frequency: { lowest, highest }, ratio: { lowest: ratio(lowest), highest: ratio(highest) } };
}
