import { llcInductanceRatio } from '../../formulas/llc/llc-inductance-ratio.ts';
import { llcLoadResistance } from '../../formulas/llc/llc-load-resistance.ts';
import { llcQualityFactor } from '../../formulas/llc/llc-quality-factor.ts';
import { llcResonantFrequency } from '../../formulas/llc/llc-resonant-frequency.ts';
import { llcWantedGain } from '../../formulas/llc/llc-wanted-gain.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { OutputPoint, StageGiven } from './stage-model.ts';
import { wanted } from './wanted.ts';

/** Resonant tank of a stage, each value with the interval that its readings leave. */
export interface Tank {
  readonly resonance: Known<'frequency'>;
  readonly inductanceRatio: Known<'ratio'>;
  /** Quality factor at an output. */
  quality(point: OutputPoint): Known<'ratio'>;
}

export function tankOf(given: StageGiven): Tank {
  const inductance = wanted(given, 'Lr', 'inductance', 'whole');
  const capacitance = wanted(given, 'Cr', 'capacitance', 'whole');
  const magnetising = wanted(given, 'Lm', 'inductance', 'whole');
  return {
    resonance: given.parameter('resonance', 'frequency', 'whole') ?? applyFormula(llcResonantFrequency, { inductance, capacitance }),
    inductanceRatio: applyFormula(llcInductanceRatio, { magnetising, resonant: inductance }),
    quality: ({ voltage, current }) => {
      const load = applyFormula(llcLoadResistance, { turnsRatio: given.turnsRatio, output: voltage, current });
      return applyFormula(llcQualityFactor, { inductance, capacitance, load });
    },
  };
}

/** Gain that an output asks for at a bus; the highest where none is named. */
export function gainFor({ turnsRatio, input }: StageGiven, { voltage }: OutputPoint, bus = input.highest): Known<'ratio'> {
  return applyFormula(llcWantedGain, { turnsRatio, output: voltage, input: bus });
}

/** "at 20 V 5 A"; "at its output" for a rail that feeds other converters. */
export function atOutput({ name }: OutputPoint): string {
  return name.startsWith('the output') ? 'at its output' : `at ${name}`;
}

/** The lowest and the highest output; those between lie between on every curve too. One where they are the same, none where none is known. */
export function outerPoints(points: readonly OutputPoint[]): readonly OutputPoint[] {
  const sorted = points.toSorted((one, other) => volts(one) - volts(other));
  const [lowest] = sorted;
  const highest = sorted.at(-1);
  if (lowest === undefined || highest === undefined) return [];
  return volts(lowest) === volts(highest) ? [highest] : [lowest, highest];
}

function volts({ voltage }: OutputPoint): number {
  return isMissing(voltage) ? 0 : voltage.nominal;
}
