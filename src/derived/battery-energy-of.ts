import type { Entry } from '../entry/entry.ts';
import { batteryEnergy } from '../formulas/energy/battery-energy.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { missing } from '../values/missing.ts';
import type { Known } from '../values/value.ts';
import { factValue } from './fact-value.ts';

/** Energy of a power bank's cells: as printed, else from the printed charge and cell voltage. */
export function batteryEnergyOf(entry: Entry): Known<'energy'> {
  const capacity = entry.nameplate.capacity;
  if (capacity === null) return missing('no battery capacity printed');
  if (capacity.energy !== null) return factValue(capacity.energy, { bound: 'use' });
  return applyFormula(batteryEnergy, {
    charge: capacity.charge === null ? missing('charge not printed', ['battery charge']) : factValue(capacity.charge, { bound: 'use' }),
    voltage: capacity.voltage === null ? missing('cell voltage not printed', ['cell voltage']) : factValue(capacity.voltage),
  });
}
