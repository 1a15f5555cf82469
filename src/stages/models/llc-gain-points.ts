import { llcFrequencyForGain } from '../../formulas/llc/llc-frequency-for-gain.ts';
import { llcSwitchingFrequency } from '../../formulas/llc/llc-switching-frequency.ts';
import { llcTankGain } from '../../formulas/llc/llc-tank-gain.ts';
import { formatInterval } from '../../units/format.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { exact } from '../../values/exact.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { gainFor, outerPoints, type Tank } from './llc-tank.ts';
import type { GainPoint, StageGiven } from './stage-model.ts';

/** Where the tank has to work: the highest and the lowest output, each at the highest and the lowest bus, loaded and unloaded. */
export function llcGainPoints(given: StageGiven, tank: Tank): readonly GainPoint[] {
  return outerPoints(given.output.points).flatMap((point) =>
    busesOf(given).flatMap((bus): GainPoint[] => {
      const name = isMissing(bus) ? point.name : `${point.name}, bus ${formatInterval(bus, 'voltage').text}`;
      const gain = gainFor(given, point, bus);
      const { transformerGain: transformer } = tank;
      const left = transformer === null ? gain : applyFormula(llcTankGain, { gain, transformer });
      const corner = (load: GainPoint['load'], quality: Known<'ratio'>): GainPoint => {
        const frequencyRatio = applyFormula(llcFrequencyForGain, { gain: left, inductanceRatio: tank.inductanceRatio, quality });
        const frequency = applyFormula(llcSwitchingFrequency, { frequencyRatio, resonance: tank.resonance });
        return { name, load, gain, frequencyRatio, frequency };
      };
      return [corner('full load', tank.quality(point)), corner('no load', exact('ratio', 0))];
    }),
  );
}

/** The highest bus, and the lowest: the one down to which the output is held where the author gives it. */
function busesOf(given: StageGiven): readonly Known<'voltage'>[] {
  const { highest } = given.input;
  const lowest = given.parameter('lowest bus', 'voltage', 'low') ?? given.input.lowest;
  if (isMissing(lowest) || (!isMissing(highest) && lowest.nominal === highest.nominal)) return [highest];
  return [highest, lowest];
}
