import { powerAfterCable } from '../../formulas/cable/power-after-cable.ts';
import { cableLoopResistance } from '../../formulas/cable/cable-loop-resistance.ts';
import { sumOfPowers } from '../../formulas/energy/sum-of-powers.ts';
import { powerEfficiency } from '../../formulas/loss/power-efficiency.ts';
import type { EfficiencyPoint, Fact, PortLoad } from '../../entry/entry.ts';
import type { EfficiencyRule } from '../../standards/efficiency/efficiency-rule.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { assume } from '../../values/assume.ts';
import { foldFormula } from '../../values/fold-formula.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { factValue } from '../fact-value.ts';
import type { EfficiencyRun, RunPoint, RunPort } from './efficiency-figures.ts';
import { withPoints } from './efficiency-runs.ts';
import { mostAmps } from './port-settings.ts';

/** A run with what a cable loses taken off, where the rule asks for that and the run was measured at the receptacle. */
export function afterCable(rule: EfficiencyRule, run: EfficiencyRun): { readonly run: EfficiencyRun; readonly remark: string | null } {
  if (rule.cableOhms === null || run.place !== 'connector' || run.ports.length === 0) return { run, remark: null };
  const resistances = run.ports.map((port) => cableOf(rule, port));
  const points = run.points.map((point): RunPoint => {
    if (point.source.notSustained !== null) return point;
    const { input } = point.source;
    const output = powerAtEnd(point.source, resistances);
    if (input === null || isMissing(output)) return { ...point, span: null };
    const efficiency = applyFormula(powerEfficiency, { output, input: factValue(input) });
    return { ...point, output, efficiency, span: isMissing(efficiency) ? null : { low: efficiency.low, high: efficiency.high } };
  });
  // Where a current or an input power was not measured, nothing can be taken off, and the run decides nothing.
  const held = points.filter(({ source }) => source.notSustained === null);
  const isWhole = held.every(({ span }) => span !== null) && held.length > 0;
  const remark = isWhole
    ? `${cableWords(resistances)} of cable taken off`
    : 'a cable has to be taken off, for which output current and input power are needed';
  return { run: withPoints(run, points), remark };
}

/** Resistance of the cable that the rule puts behind a port, there and back: its own figure for USB-C, a metre of copper for the others. */
function cableOf({ cableOhms, otherCable, source }: EfficiencyRule, { port, fullAmps }: RunPort): Known<'resistance'> {
  const most = (port === null ? null : mostAmps(port)) ?? fullAmps ?? 0;
  if (cableOhms !== null && port?.connector === 'USB-C') {
    const ohms = most > 3 ? cableOhms.above3A : cableOhms.upTo3A;
    return assume('resistance', ohms, ohms, ohms, 'cable of the rule, there and back', source);
  }
  if (otherCable === null || most > 5) return missing('the cable of the rule is not known', ['cable']);
  const area = most > 3 ? otherCable.areaUpTo5A : otherCable.areaUpTo3A;
  return applyFormula(cableLoopResistance, {
    length: assume('length', otherCable.length, otherCable.length, otherCable.length, 'cable of the rule', source),
    area: assume('area', area, area, area, 'cable of the rule', source),
  });
}

function powerAtEnd(source: EfficiencyPoint, resistances: readonly Known<'resistance'>[]): Known<'power'> {
  const loads: readonly Pick<PortLoad, 'output' | 'measuredOutput' | 'current'>[] = source.loads.length === 0 ? [source] : source.loads;
  const powers = loads.map(({ output, measuredOutput, current }, index) =>
    endPower(measuredOutput ?? output, current, resistances[index] ?? missing('cable not known', ['cable'])),
  );
  return foldFormula<'power'>(powers, (first, second) => applyFormula(sumOfPowers, { first, second }), 'output power of a port');
}

function endPower(volts: Fact<'voltage'> | null, current: Fact<'current'> | null, resistance: Known<'resistance'>): Known<'power'> {
  if (volts === null || current === null) return missing('output current not measured', ['output current']);
  return applyFormula(powerAfterCable, { voltage: factValue(volts), current: factValue(current), resistance });
}

/** "0.100 ohm", or one for each port where they differ. */
function cableWords(resistances: readonly Known<'resistance'>[]): string {
  const each = resistances.map((ohms) => (isMissing(ohms) ? '' : ohms.nominal.toFixed(3)));
  return `${[...new Set(each)].length === 1 ? (each[0] ?? '') : each.join(' + ')} ohm`;
}
