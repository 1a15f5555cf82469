import { llcFrequencyRatio } from '../../formulas/llc/llc-frequency-ratio.ts';
import { llcGain } from '../../formulas/llc/llc-gain.ts';
import { llcGainWithTransformer } from '../../formulas/llc/llc-gain-with-transformer.ts';
import { llcOutputRippleCurrent } from '../../formulas/llc/llc-output-ripple-current.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import type { Known } from '../../values/value.ts';
import { tankCurrent } from './llc-currents.ts';
import { atOutput, gainFor, qualityAt, tankOf, type Tank } from './llc-tank.ts';
import type { OperatingValue, OutputPoint, StageGiven } from './stage-model.ts';
import { worstCorner } from './stress.ts';

/** Resonance, inductance ratio, currents, and the gain that the outputs ask for beside the one that the tank has at the measured frequency. */
export function llcOperating(given: StageGiven): readonly OperatingValue[] {
  const tank = tankOf(given);
  const { transformerGain } = tank;
  return [
    { name: 'turns ratio', value: given.turnsRatio },
    { name: 'resonant frequency', value: tank.resonance },
    { name: 'magnetising over resonant inductance', value: tank.inductanceRatio },
    ...(transformerGain === null ? [] : [{ name: 'gain at resonance', value: transformerGain }]),
    ...atFullLoad(given, tank),
    ...given.output.points.map((point) => ({ name: `gain asked for ${atOutput(point)}`, value: gainFor(given, point) })),
  ];
}

function atFullLoad(given: StageGiven, tank: Tank): readonly OperatingValue[] {
  const full = given.output.points.at(-1);
  if (full === undefined) return [];
  const ripple = worstCorner(given, ({ current }) => applyFormula(llcOutputRippleCurrent, { current }));
  return [
    { name: 'quality factor at full load', value: qualityAt(given, full, given.turnsRatio) },
    ...atGivenFrequency(given, tank, full),
    { name: 'rms current of the primary winding', value: worstCorner(given, (point) => tankCurrent(given, point)).stress },
    { name: 'ripple current of the output capacitors together', value: ripple.stress },
  ];
}

function atGivenFrequency(given: StageGiven, tank: Tank, full: OutputPoint): readonly OperatingValue[] {
  const frequency = given.parameter('frequency', 'frequency', 'high');
  if (frequency === null) return [];
  const ratio = applyFormula(llcFrequencyRatio, { frequency, resonance: tank.resonance });
  return [
    { name: 'switching over resonant frequency', value: ratio },
    { name: 'gain of the tank at that frequency and full load', value: gainAt(tank, full, ratio) },
  ];
}

function gainAt(tank: Tank, point: OutputPoint, frequencyRatio: Known<'ratio'>): Known<'ratio'> {
  const own = applyFormula(llcGain, { inductanceRatio: tank.inductanceRatio, quality: tank.quality(point), frequencyRatio });
  const { transformerGain: transformer } = tank;
  return transformer === null ? own : applyFormula(llcGainWithTransformer, { transformer, tank: own });
}
