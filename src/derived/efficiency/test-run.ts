import type { Port } from '../../entry/entry.ts';
import type { EfficiencyRule } from '../../standards/efficiency/efficiency-rule.ts';
import type { EfficiencyRun } from './efficiency-figures.ts';
import { withFullAmps } from './efficiency-runs.ts';
import { lowestVoltageTest } from './lowest-voltage-test.ts';

/** A run on the loads that a rule asks for. */
interface TestRun {
  readonly run: EfficiencyRun;
  readonly fullAmps: number;
  readonly remark: string | null;
}

/**
 * The run on the loads of a rule: those of the nameplate, or 2, 1.5, 1 and 0.5 A at the lowest voltage of a USB PD port that can give
 * 3 A there. Null where full load is not known.
 */
export function testRun(rule: EfficiencyRule, port: Port, run: EfficiencyRun): TestRun | null {
  const { fullAmps, setting } = run;
  if (fullAmps === null || setting === null) return null;
  const lowest = lowestVoltageTest(rule, port);
  if (lowest === null || Math.abs(setting - lowest.volts) > 0.02 * lowest.volts) return { run, fullAmps, remark: null };
  const loads = [1, 0.75, 0.5, 0.25].map((share) => String(share * lowest.amps)).join(', ');
  return { run: withFullAmps(run, lowest.amps), fullAmps: lowest.amps, remark: `tested with ${loads} A at its lowest voltage` };
}
