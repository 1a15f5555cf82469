import { powerAfterCable } from '../../formulas/cable/power-after-cable.ts';
import { powerEfficiency } from '../../formulas/loss/power-efficiency.ts';
import type { EfficiencyRule } from '../../standards/efficiency/efficiency-rule.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { assume } from '../../values/assume.ts';
import { isMissing } from '../../values/value.ts';
import { factValue } from '../fact-value.ts';
import type { EfficiencyRun, RunPoint } from './efficiency-figures.ts';
import { withPoints } from './efficiency-runs.ts';

/** A run with what a cable loses taken off, where the rule asks for that and the run was measured at the receptacle. */
export function afterCable(rule: EfficiencyRule, run: EfficiencyRun): { readonly run: EfficiencyRun; readonly remark: string | null } {
  const { cableOhms, source } = rule;
  if (cableOhms === null || run.place !== 'connector' || run.fullAmps === null) return { run, remark: null };
  const ohms = run.fullAmps > 3 ? cableOhms.above3A : cableOhms.upTo3A;
  const resistance = assume('resistance', ohms, ohms, ohms, 'cable of the rule, there and back', source);
  const points = run.points.map((point): RunPoint => {
    const { input, current } = point.source;
    const volts = point.source.measuredOutput ?? point.source.output;
    if (input === null || current === null || volts === null) return { ...point, span: null };
    const output = applyFormula(powerAfterCable, { voltage: factValue(volts), current: factValue(current), resistance });
    const efficiency = applyFormula(powerEfficiency, { output, input: factValue(input) });
    return { ...point, output, efficiency, span: isMissing(efficiency) ? null : { low: efficiency.low, high: efficiency.high } };
  });
  // Where a current or an input power was not measured, nothing can be taken off, and the run decides nothing.
  const isWhole = points.every(({ span }) => span !== null) && points.length > 0;
  const remark = isWhole
    ? `${ohms.toFixed(3)} ohm of cable taken off`
    : 'a cable has to be taken off, for which output current and input power are needed';
  return { run: withPoints(run, points), remark };
}
