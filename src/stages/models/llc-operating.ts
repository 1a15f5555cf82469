import { llcFrequencyRatio } from '../../formulas/llc/llc-frequency-ratio.ts';
import { llcGain } from '../../formulas/llc/llc-gain.ts';
import { llcInductanceRatio } from '../../formulas/llc/llc-inductance-ratio.ts';
import { llcLoadResistance } from '../../formulas/llc/llc-load-resistance.ts';
import { llcQualityFactor } from '../../formulas/llc/llc-quality-factor.ts';
import { llcResonantFrequency } from '../../formulas/llc/llc-resonant-frequency.ts';
import { llcWantedGain } from '../../formulas/llc/llc-wanted-gain.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { GainCurve, OperatingValue, OutputPoint, StageGiven } from './stage-model.ts';
import { llcGainPoints } from './llc-gain-points.ts';
import { wanted } from './wanted.ts';

/** Resonant tank of a stage. */
export interface Tank {
  readonly resonance: Known<'frequency'>;
  readonly inductanceRatio: Known<'ratio'>;
  /** Quality factor at an output. */
  quality(point: OutputPoint): Known<'ratio'>;
}

function tankOf(given: StageGiven): Tank {
  const inductance = wanted(given, 'Lr', 'inductance', 'low');
  const capacitance = wanted(given, 'Cr', 'capacitance', 'low');
  const magnetising = wanted(given, 'Lm', 'inductance', 'low');
  return {
    resonance: given.parameter('resonance', 'frequency', 'low') ?? applyFormula(llcResonantFrequency, { inductance, capacitance }),
    inductanceRatio: applyFormula(llcInductanceRatio, { magnetising, resonant: inductance }),
    quality: ({ voltage, current }) => {
      const load = applyFormula(llcLoadResistance, { turnsRatio: given.turnsRatio, output: voltage, current });
      return applyFormula(llcQualityFactor, { inductance, capacitance, load });
    },
  };
}

/** Resonance, inductance ratio, and the gain that the outputs ask for beside the one that the tank has at the measured frequency. */
export function llcOperating(given: StageGiven): readonly OperatingValue[] {
  const tank = tankOf(given);
  const frequency = given.parameter('frequency', 'frequency', 'high');
  const full = given.output.points.at(-1);
  const gains = given.output.points.map((point) => ({ name: `gain asked for ${at(point)}`, value: gainFor(given, point) }));
  const ratio = frequency === null ? null : applyFormula(llcFrequencyRatio, { frequency, resonance: tank.resonance });
  const own =
    ratio === null || full === undefined
      ? []
      : [
          { name: 'switching over resonant frequency', value: ratio },
          { name: 'gain of the tank at that frequency and full load', value: gainAt(tank, full, ratio) },
        ];
  return [
    { name: 'turns ratio', value: given.turnsRatio },
    { name: 'resonant frequency', value: tank.resonance },
    { name: 'magnetising over resonant inductance', value: tank.inductanceRatio },
    ...own,
    ...gains,
  ];
}

function at({ name }: OutputPoint): string {
  return name.startsWith('the output') ? 'at its output' : `at ${name}`;
}

function gainFor({ turnsRatio, input }: StageGiven, point: OutputPoint): Known<'ratio'> {
  return applyFormula(llcWantedGain, { turnsRatio, output: point.voltage, input: input.highest });
}

function gainAt(tank: Tank, point: OutputPoint, frequencyRatio: Known<'ratio'>): Known<'ratio'> {
  return applyFormula(llcGain, { inductanceRatio: tank.inductanceRatio, quality: tank.quality(point), frequencyRatio });
}

/** From 0.4 to 2 times the resonance, evenly on a logarithmic scale. */
const CURVE: readonly number[] = Array.from({ length: 49 }, (_, index) => 0.4 * 5 ** (index / 48));

/**
 * Gain over frequency by the first-harmonic approximation, at full load and with none, and what the outputs ask for.
 * Null where Lr, Cr, Lm or the turns are not known.
 */
export function llcGainCurve(given: StageGiven): GainCurve | null {
  const tank = tankOf(given);
  const full = given.output.points.at(-1);
  if (full === undefined || isMissing(tank.resonance) || isMissing(tank.inductanceRatio)) return null;
  const quality = tank.quality(full);
  if (isMissing(quality)) return null;
  const { nominal: inductanceRatio } = tank.inductanceRatio;
  const curve = (load: number): readonly (readonly [number, number])[] =>
    CURVE.map((ratio) => [ratio, llcGain.compute({ inductanceRatio, quality: load, frequencyRatio: ratio })] as const);
  const asked = given.output.points.map((point) => ({ name: at(point), gain: gainFor(given, point) }));
  const frequency = given.parameter('frequency', 'frequency', 'high');
  return {
    resonance: tank.resonance,
    fullLoad: curve(quality.nominal),
    noLoad: curve(0),
    asked,
    points: llcGainPoints(given, tank),
    running: frequency === null ? null : applyFormula(llcFrequencyRatio, { frequency, resonance: tank.resonance }),
  };
}
