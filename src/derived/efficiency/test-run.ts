import type { EfficiencyRule } from '../../standards/efficiency/efficiency-rule.ts';
import { assume } from '../../values/assume.ts';
import type { Known, Value } from '../../values/value.ts';
import type { EfficiencyRun, FullLoads, RunPort } from './efficiency-figures.ts';
import { withFullLoad } from './efficiency-runs.ts';
import { lowestVoltageTest } from './lowest-voltage-test.ts';
import { fullLoads } from './shared-loads.ts';

/** A run on the loads that a rule asks for. */
export interface TestRun {
  readonly run: EfficiencyRun;
  /** Ports with the current at full load that the rule asks of them. */
  readonly ports: readonly RunPort[];
  readonly remark: string | null;
}

/**
 * The run on the loads of a rule: those of the nameplate, or 2, 1.5, 1 and 0.5 A at the lowest voltage of a USB PD port that can give
 * 3 A there; of several ports all made smaller alike where together they are above the rated power. Null where full load is not known.
 */
export function testRun(rule: EfficiencyRule, run: EfficiencyRun, rated: Known<'power'>): TestRun | null {
  const ports = run.ports.map((port) => atLowestVoltage(rule, port));
  if (ports.some(({ fullAmps }) => fullAmps === null)) return null;
  const isLowest = ports.some((port, index) => port !== run.ports[index]);
  if (run.full === null) {
    const fullAmps = ports[0]?.fullAmps ?? null;
    if (fullAmps === null || ports.length > 1) return null;
    if (!isLowest) return { run, ports, remark: null };
    const loads = [1, 0.75, 0.5, 0.25].map((share) => String(share * fullAmps)).join(', ');
    return { run: withFullLoad(run, { fullAmps, ports, full: null }), ports, remark: `tested with ${loads} A at its lowest voltage` };
  }
  const full = isLowest ? fullLoads(ports, rated, mostOf(rule)) : run.full;
  if (full === null) return null;
  const tested = isLowest ? withFullLoad(run, { fullAmps: null, ports, full }) : run;
  return { run: tested, ports, remark: loadWords(full) };
}

/** At the lowest voltage of a USB PD supply each port, whatever it is rated for, counts with no more than this in the factor. */
function mostOf({ mostAtLowest, source }: EfficiencyRule): Value<'power'> | null {
  const reason = 'most that a port counts with at the lowest voltage';
  return mostAtLowest === null ? null : assume('power', mostAtLowest, mostAtLowest, mostAtLowest, reason, source);
}

/** The port with the current of the test at its lowest voltage, where the rule has one and the port was set to it. */
function atLowestVoltage(rule: EfficiencyRule, port: RunPort): RunPort {
  const { setting, rated } = port;
  const lowest = port.port === null ? null : lowestVoltageTest(rule, port.port);
  if (lowest === null || setting === null || rated === null || Math.abs(setting - lowest.volts) > 0.02 * lowest.volts) return port;
  const current = assume('current', lowest.amps, lowest.amps, lowest.amps, 'load of a USB PD port at its lowest voltage', rule.source);
  return { ...port, rated: { ...rated, current }, fullAmps: lowest.amps };
}

/** "full load 1.87 A + 1.15 A, derated by 0.575". */
function loadWords({ amps, derating }: FullLoads): string {
  const loads = amps.map((each) => `${String(Number(each.toPrecision(3)))} A`).join(' + ');
  return `full load ${loads}${derating.nominal < 1 ? `, derated by ${derating.nominal.toPrecision(3)}` : ''}`;
}
