import type { EfficiencyPoint, Entry } from '../../entry/entry.ts';
import { powerEfficiency } from '../../formulas/loss/power-efficiency.ts';
import { inputPower } from '../../formulas/mains/input-power.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known, type Value } from '../../values/value.ts';
import { factValue } from '../fact-value.ts';
import { outputPower } from '../output-power.ts';

/** One measured load point with its powers: a device or a stage at one line and one output. */
export interface MeasuredLoad {
  readonly point: EfficiencyPoint;
  readonly input: Value<'power'>;
  readonly output: Value<'power'>;
  readonly efficiency: Known<'ratio'>;
}

/** Every load point whose input and output power are measured or follow from what is. */
export function measuredLoads(entry: Entry, of: string | null): readonly MeasuredLoad[] {
  return entry.efficiency.flatMap((point) => {
    if (point.statistic !== 'point' || point.of !== of) return [];
    const output = outputPower(point);
    const stated = point.efficiency === null ? missing('efficiency not given') : factValue(point.efficiency);
    const input = point.input === null ? applyFormula(inputPower, { power: output, efficiency: stated }) : factValue(point.input);
    const efficiency = isMissing(stated) ? applyFormula(powerEfficiency, { output, input }) : stated;
    return isMissing(input) || isMissing(output) || input.nominal < output.nominal ? [] : [{ point, input, output, efficiency }];
  });
}

/** The load whose output is nearest to a power. */
export function nearestLoad(loads: readonly MeasuredLoad[], watts: number): MeasuredLoad | null {
  const away = (load: MeasuredLoad): number => Math.abs(Math.log(Math.max(load.output.nominal, 1e-9) / Math.max(watts, 1e-9)));
  return loads.reduce<MeasuredLoad | null>((best, load) => (best === null || away(load) < away(best) ? load : best), null);
}

/** "15.00 V 2 A", as written. */
export function loadWords({ point }: MeasuredLoad): string | null {
  if (point.loads.length > 0) return sharedLoadWords(point);
  const volts = (point.measuredOutput ?? point.output)?.quantity.written;
  const amps = (point.current ?? point.load)?.quantity.written;
  return volts === undefined || amps === undefined ? null : `${volts} ${amps}`;
}

/** "C1 19.99 V 3.25 A + C2 8.99 V 3 A". */
function sharedLoadWords({ loads }: EfficiencyPoint): string {
  const words = loads.map(({ port, measuredOutput, output, current, power }) =>
    [port, ...[...(power === null ? [measuredOutput ?? output, current] : [power])].map((fact) => fact?.quantity.written ?? '')]
      .filter((word) => word !== '')
      .join(' '),
  );
  return words.join(' + ');
}
