import type { EfficiencyPoint, Entry } from '../entry/entry.ts';
import { electricPower } from '../formulas/energy/electric-power.ts';
import { powerLoss } from '../formulas/energy/power-loss.ts';
import { sumOfPowers } from '../formulas/energy/sum-of-powers.ts';
import { powerEfficiency } from '../formulas/loss/power-efficiency.ts';
import type { OutputPoint } from '../stages/models/stage-model.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { foldFormula } from '../values/fold-formula.ts';
import { isMissing, type Known } from '../values/value.ts';
import { conductionAt } from './conduction-at.ts';
import type { LossBudget } from './derived.ts';
import { factValue } from './fact-value.ts';
import { loadPoint } from './load-point.ts';
import type { DeviceFigures } from './stress/stage-given.ts';

interface Measured {
  readonly source: EfficiencyPoint;
  readonly line: Known<'voltage'>;
  readonly input: Known<'power'>;
  readonly output: OutputPoint;
  readonly port: string;
}

/**
 * What was measured to be lost at the strongest measured point, beside what conduction explains of it at that very line and
 * load. What stays is switching, cores, windings, control and everything that nobody named.
 */
export function lossBudget(entry: Entry, figures: DeviceFigures): LossBudget | null {
  const point = strongest(entry);
  if (point === null) return null;
  const measured = applyFormula(powerLoss, { input: point.input, output: point.output.power });
  const efficiency = applyFormula(powerEfficiency, { output: point.output.power, input: point.input });
  const at = loadPoint(entry, { line: point.line, efficiency }, new Map([[point.port, point.output]]));
  const items = conductionAt(entry, figures, at);
  const known = items.flatMap(({ loss }) => (isMissing(loss) ? [] : [loss]));
  const explained = foldFormula<'power'>(
    known,
    (first, second) => applyFormula(sumOfPowers, { first, second }),
    'loss that could be worked out',
  );
  return {
    point: wordsOf(point),
    measured,
    items,
    explained,
    unexplained: applyFormula(powerLoss, { input: measured, output: explained }),
  };
}

/** The measured point of the whole device with the most output power; of equals the one at the lowest line. */
function strongest(entry: Entry): Measured | null {
  const points = entry.efficiency.flatMap((source): Measured[] => {
    const { port, line, input, current } = source;
    const volts = source.measuredOutput ?? source.output;
    const isWhole = source.statistic === 'point' && source.of === null;
    if (!isWhole || port === null || line === null || input === null || current === null || volts === null) return [];
    const at = { voltage: factValue(volts), current: factValue(current) };
    const output = { ...at, power: applyFormula(electricPower, at), name: `${volts.quantity.written} ${current.quantity.written}` };
    return [{ source, port, line: factValue(line), input: factValue(input), output }];
  });
  return points.reduce<Measured | null>((best, one) => (best === null || beats(one, best) ? one : best), null);
}

function beats(one: Measured, best: Measured): boolean {
  const power = (measured: Measured): number => (isMissing(measured.output.power) ? 0 : measured.output.power.nominal);
  const line = (measured: Measured): number => (isMissing(measured.line) ? Number.POSITIVE_INFINITY : measured.line.nominal);
  // Two runs at the same setting differ by what the meter shows; a tenth of a percent is the same load.
  if (Math.abs(power(one) - power(best)) > 1e-3 * power(best)) return power(one) > power(best);
  return line(one) < line(best);
}

function wordsOf({ source, port, output }: Measured): string {
  return `${source.line?.quantity.written ?? ''}, ${port} at ${output.name}`;
}
