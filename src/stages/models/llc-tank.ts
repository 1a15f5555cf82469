import { llcEquivalentTurnsRatio } from '../../formulas/llc/llc-equivalent-turns-ratio.ts';
import { llcGainIntegrated } from '../../formulas/llc/llc-gain-integrated.ts';
import { llcInductanceRatio } from '../../formulas/llc/llc-inductance-ratio.ts';
import { llcLoadResistance } from '../../formulas/llc/llc-load-resistance.ts';
import { llcMagnetisingFromOpen } from '../../formulas/llc/llc-magnetising-from-open.ts';
import { llcQualityFactor } from '../../formulas/llc/llc-quality-factor.ts';
import { llcResonantFrequency } from '../../formulas/llc/llc-resonant-frequency.ts';
import { llcWantedGain } from '../../formulas/llc/llc-wanted-gain.ts';
import { openOverShortInductance } from '../../formulas/llc/open-over-short-inductance.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { windingAt } from './reflected.ts';
import type { OutputPoint, ParameterEdge, StageGiven } from './stage-model.ts';
import { wanted } from './wanted.ts';

/**
 * Resonant tank of a stage, each value with the interval that its readings leave. Where the leakage of the transformer is the resonant
 * inductance (`Lp` is given), the tank is that of the equivalent circuit: a series and a parallel inductance and an ideal transformer.
 */
export interface Tank {
  readonly resonance: Known<'frequency'>;
  readonly inductanceRatio: Known<'ratio'>;
  /** Gain at resonance that the leakage of the transformer gives; null with a choke of its own, whose gain is 1. */
  readonly transformerGain: Known<'ratio'> | null;
  /** Quality factor at an output. */
  quality(point: OutputPoint): Known<'ratio'>;
}

export function tankOf(given: StageGiven): Tank {
  const inductance = wanted(given, 'Lr', 'inductance', 'whole');
  const capacitance = wanted(given, 'Cr', 'capacitance', 'whole');
  return {
    resonance: given.parameter('resonance', 'frequency', 'whole') ?? applyFormula(llcResonantFrequency, { inductance, capacitance }),
    inductanceRatio: applyFormula(llcInductanceRatio, { magnetising: magnetisingOf(given, 'whole'), resonant: inductance }),
    transformerGain: transformerGainOf(given),
    quality: (point) => qualityAt(given, point, equivalentRatio(given)),
  };
}

/** Quality factor at an output, by one turns ratio: that of the turns, or that of the equivalent circuit. */
export function qualityAt(given: StageGiven, { voltage, current }: OutputPoint, turnsRatio: Known<'ratio'>): Known<'ratio'> {
  const load = applyFormula(llcLoadResistance, { turnsRatio, output: voltage, current });
  const inductance = wanted(given, 'Lr', 'inductance', 'whole');
  return applyFormula(llcQualityFactor, { inductance, capacitance: wanted(given, 'Cr', 'capacitance', 'whole'), load });
}

/** Inductance in parallel to the load: as given, else what a transformer whose leakage resonates leaves of its open inductance. */
export function magnetisingOf(given: StageGiven, edge: ParameterEdge): Known<'inductance'> {
  const open = given.parameter('Lp', 'inductance', edge);
  if (open === null) return wanted(given, 'Lm', 'inductance', edge);
  return applyFormula(llcMagnetisingFromOpen, { open, shorted: wanted(given, 'Lr', 'inductance', edge) });
}

function transformerGainOf(given: StageGiven): Known<'ratio'> | null {
  const open = given.parameter('Lp', 'inductance', 'whole');
  if (open === null) return null;
  const ratio = applyFormula(openOverShortInductance, { open, shorted: wanted(given, 'Lr', 'inductance', 'whole') });
  return applyFormula(llcGainIntegrated, { ratio });
}

/** Turns ratio of the ideal transformer behind the tank: that of the turns with a choke of its own. */
export function equivalentRatio(given: StageGiven): Known<'ratio'> {
  const gain = transformerGainOf(given);
  return gain === null ? given.turnsRatio : applyFormula(llcEquivalentTurnsRatio, { turnsRatio: given.turnsRatio, gain });
}

/** Gain that an output asks for at a bus, with the drop of a rectifying diode; the highest bus where none is named. */
export function gainFor(given: StageGiven, { voltage }: OutputPoint, bus = given.input.highest): Known<'ratio'> {
  return applyFormula(llcWantedGain, { turnsRatio: given.turnsRatio, output: windingAt(given, voltage), input: bus });
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
