import type { Entry } from '../entry/entry.ts';
import { bulkCapacitancePerWatt } from '../formulas/bulk/bulk-capacitance-per-watt.ts';
import { logValues } from '../logs/log-values.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { missing } from '../values/missing.ts';
import type { Known } from '../values/value.ts';
import { batteryEnergyOf } from './battery-energy-of.ts';
import type { Derived } from './derived.ts';
import { factValue } from './fact-value.ts';
import { yCapacitorCurrentOf } from './y-capacitor-current-of.ts';

/** Values that prose may quote by name with `:value[density]`. */
export function namedValues(
  entry: Entry,
  figures: Pick<Derived, 'ratedPower' | 'size' | 'input' | 'bulk' | 'logs'>,
): Readonly<Record<string, Known>> {
  const { ratedPower, size, input, bulk, logs } = figures;
  return {
    'rated-power': ratedPower,
    volume: size.volume,
    mass: entry.body.mass === null ? missing('mass not given', ['mass']) : factValue(entry.body.mass),
    density: size.density,
    'specific-power': size.specificPower,
    'high-line': input.highLine,
    'peak-voltage': input.peak,
    'low-line': input.lowLine,
    'input-current': input.inputCurrent,
    'bulk-capacitance': bulk.capacitance,
    'bulk-per-watt': applyFormula(bulkCapacitancePerWatt, { capacitance: bulk.capacitance, power: ratedPower }),
    'bulk-voltage': bulk.voltage,
    'stored-energy': bulk.energy,
    'bleed-resistance': bulk.bleed,
    'time-to-safe': bulk.timeToSafe,
    'y-current': yCapacitorCurrentOf(entry, input),
    'battery-energy': batteryEnergyOf(entry),
    ...Object.fromEntries(logs.flatMap((log) => Object.entries(logValues(log)))),
  };
}
