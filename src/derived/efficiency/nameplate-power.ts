import type { Port } from '../../entry/entry.ts';
import type { EfficiencyRule } from '../../standards/efficiency/efficiency-rule.ts';
import type { RunPort } from './efficiency-figures.ts';
import { lowestVoltageTest } from './lowest-voltage-test.ts';
import { settingsOf } from './port-settings.ts';
import { runPort } from './shared-loads.ts';

/** Nameplate power that the limits of a supply follow from, W. Two ends where the rule's text can be read in two ways. */
export interface NameplatePower {
  readonly low: number;
  readonly high: number;
}

/**
 * Nameplate power of several outputs at their lowest voltages, as a rule counts it: 2 A for each USB PD port that can give 3 A there, and
 * what the others are rated for. The rule of the United States names USB PD ports alone, so that its text can be read without the others.
 */
export function lowestNameplatePower(rule: EfficiencyRule, outputs: readonly Port[], rated: number): NameplatePower | null {
  const each = outputs.map((port) => {
    const test = lowestVoltageTest(rule, port);
    const lowest = settingsOf(port)?.lowest ?? null;
    const own = lowest === null ? null : runPort({ ports: [port] }, port.id, lowest).fullAmps;
    if (test !== null) return { isTested: true, watts: test.volts * test.amps };
    return lowest === null || own === null ? null : { isTested: false, watts: lowest * own };
  });
  const known = each.filter((one) => one !== null);
  if (known.length < each.length || !known.some(({ isTested }) => isTested)) return null;
  const all = Math.min(
    rated,
    known.reduce((sum, { watts }) => sum + watts, 0),
  );
  const tested = Math.min(
    rated,
    known.reduce((sum, { isTested, watts }) => sum + (isTested ? watts : 0), 0),
  );
  return { low: rule.countsOthersAtLowest ? all : tested, high: all };
}

/** Whether every port of a run is at its lowest voltage, and at least one of them has a higher one. */
export function isAtLowest(ports: readonly RunPort[]): boolean {
  const settings = ports.map(({ port }) => (port === null ? null : settingsOf(port)));
  const isLowest = ports.every(({ setting }, index) => isNear(setting, settings[index]?.lowest ?? null));
  return isLowest && settings.some((each) => each !== null && each.lowest < each.highest);
}

/** Whether every port of a run is at its highest voltage. */
export function isAtHighest(ports: readonly RunPort[]): boolean {
  return ports.every(({ port, setting }) => isNear(setting, port === null ? null : (settingsOf(port)?.highest ?? null)));
}

function isNear(setting: number | null, volts: number | null): boolean {
  return setting !== null && volts !== null && Math.abs(setting - volts) <= 0.02 * volts;
}
