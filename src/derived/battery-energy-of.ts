import type { Entry, PrintedCapacity } from '../entry/entry.ts';
import { batteryEnergy } from '../formulas/energy/battery-energy.ts';
import { applyFormula } from '../values/apply-formula.ts';
import { missing } from '../values/missing.ts';
import { isMissing, type Known } from '../values/value.ts';
import { factValue, isOf } from './fact-value.ts';

/** Energy of a power bank's cells: as printed, else from the printed charge and cell voltage, else from its battery stage. */
export function batteryEnergyOf(entry: Entry): Known<'energy'> {
  const printed =
    entry.nameplate.capacity === null ? missing('no battery capacity printed', ['battery capacity']) : energyOf(entry.nameplate.capacity);
  const pack = isMissing(printed) ? packOf(entry) : null;
  return pack === null ? printed : energyOf(pack);
}

function energyOf(capacity: PrintedCapacity): Known<'energy'> {
  if (capacity.energy !== null) return factValue(capacity.energy, { bound: 'use' });
  return applyFormula(batteryEnergy, {
    charge:
      capacity.charge === null
        ? missing('charge of the cells not given', ['battery charge'])
        : factValue(capacity.charge, { bound: 'use' }),
    voltage: capacity.voltage === null ? missing('voltage of the cells not given', ['cell voltage']) : factValue(capacity.voltage),
  });
}

function packOf(entry: Entry): PrintedCapacity | null {
  const parameters = entry.stages.find((stage) => stage.kind === 'battery-pack')?.parameters;
  if (parameters === undefined) return null;
  const { energy, charge, voltage } = { energy: parameters['energy'], charge: parameters['charge'], voltage: parameters['voltage'] };
  return {
    energy: isOf(energy, 'energy') ? energy : null,
    charge: isOf(charge, 'charge') ? charge : null,
    voltage: isOf(voltage, 'voltage') ? voltage : null,
  };
}
