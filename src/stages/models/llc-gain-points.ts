import { llcFrequencyForGain } from '../../formulas/llc/llc-frequency-for-gain.ts';
import { llcWantedGain } from '../../formulas/llc/llc-wanted-gain.ts';
import { formatInterval } from '../../units/format.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { exact } from '../../values/exact.ts';
import { isMissing, type Known } from '../../values/value.ts';
import type { GainPoint, OutputPoint, StageGiven } from './stage-model.ts';
import type { Tank } from './llc-operating.ts';

/** Where the tank has to work: the highest and the lowest output, each at the highest and the lowest bus, loaded and unloaded. */
export function llcGainPoints(given: StageGiven, tank: Pick<Tank, 'inductanceRatio' | 'quality'>): readonly GainPoint[] {
  return outerPoints(given.output.points).flatMap((point) =>
    busesOf(given).flatMap((bus): GainPoint[] => {
      const name = isMissing(bus) ? point.name : `${point.name}, bus ${formatInterval(bus, 'voltage').text}`;
      const gain = applyFormula(llcWantedGain, { turnsRatio: given.turnsRatio, output: point.voltage, input: bus });
      const at = (quality: Known<'ratio'>): Known<'ratio'> =>
        applyFormula(llcFrequencyForGain, { gain, inductanceRatio: tank.inductanceRatio, quality });
      return [
        { name, load: 'full load', gain, frequencyRatio: at(tank.quality(point)) },
        { name, load: 'no load', gain, frequencyRatio: at(exact('ratio', 0)) },
      ];
    }),
  );
}

/** Those between lie between on the curve too. */
function outerPoints(points: readonly OutputPoint[]): readonly OutputPoint[] {
  const volts = ({ voltage }: OutputPoint): number => (isMissing(voltage) ? 0 : voltage.nominal);
  const sorted = points.toSorted((one, other) => volts(one) - volts(other));
  const [lowest] = sorted;
  const highest = sorted.at(-1);
  if (lowest === undefined || highest === undefined) return [];
  return volts(lowest) === volts(highest) ? [highest] : [lowest, highest];
}

function busesOf({ input: { highest, lowest } }: StageGiven): readonly Known<'voltage'>[] {
  if (isMissing(lowest) || (!isMissing(highest) && lowest.nominal === highest.nominal)) return [highest];
  return [highest, lowest];
}
