import { llcFrequencyRatio } from '../../formulas/llc/llc-frequency-ratio.ts';
import { llcGain } from '../../formulas/llc/llc-gain.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import type { Known } from '../../values/value.ts';
import { atOutput, gainFor, tankOf, type Tank } from './llc-tank.ts';
import type { OperatingValue, OutputPoint, StageGiven } from './stage-model.ts';

/** Resonance, inductance ratio, and the gain that the outputs ask for beside the one that the tank has at the measured frequency. */
export function llcOperating(given: StageGiven): readonly OperatingValue[] {
  const tank = tankOf(given);
  const frequency = given.parameter('frequency', 'frequency', 'high');
  const full = given.output.points.at(-1);
  const gains = given.output.points.map((point) => ({ name: `gain asked for ${atOutput(point)}`, value: gainFor(given, point) }));
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

function gainAt(tank: Tank, point: OutputPoint, frequencyRatio: Known<'ratio'>): Known<'ratio'> {
  return applyFormula(llcGain, { inductanceRatio: tank.inductanceRatio, quality: tank.quality(point), frequencyRatio });
}
