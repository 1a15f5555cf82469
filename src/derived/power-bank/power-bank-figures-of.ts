import type { Entry, MeasuredPoint, PrintedCapacity } from '../../entry/entry.ts';
import { batteryEnergy } from '../../formulas/energy/battery-energy.ts';
import { energyRatio } from '../../formulas/energy/energy-ratio.ts';
import type { LogSummary } from '../../logs/log-summary.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { batteryEnergyOf } from '../battery-energy-of.ts';
import { factValue, isOf } from '../fact-value.ts';
import { cellEnergy } from './cell-energy.ts';
import { deliveredRows, greatestDelivered } from './delivered-rows.ts';
import type { PowerBankFigures, RechargeRow } from './power-bank-figures.ts';
import { travelClass } from './travel-class.ts';
import { fittedParts } from '../fitted-parts.ts';

/** What a power bank holds, gives back and takes in; null for a device without cells. */
export function powerBankFigures(entry: Entry, logs: readonly LogSummary[]): PowerBankFigures | null {
  if (!hasCells(entry)) return null;
  const { outputCapacity } = entry.nameplate;
  const [fromCells, printed] = [cellEnergy(entry), batteryEnergyOf(entry)];
  const stored = isMissing(fromCells) ? printed : fromCells;
  const ratedEnergy = ratedAtOutput(outputCapacity);
  const delivered = deliveredRows(entry, logs, stored, { voltage: outputCapacity?.voltage ?? null, energy: ratedEnergy });
  const carried = isMissing(printed) ? fromCells : printed;
  return {
    cells: fittedParts(entry, 'cell').flatMap(({ references }) => references),
    cellEnergy: fromCells,
    printed,
    stored,
    rated: {
      voltage: outputCapacity?.voltage?.quantity.written ?? null,
      energy: ratedEnergy,
      ratio: applyFormula(energyRatio, { delivered: ratedEnergy, stored }),
    },
    delivered,
    recharge: rechargeRows(entry, greatestDelivered(delivered)),
    travel: { energy: carried, verdict: travelClass(carried) },
  };
}

function hasCells({ device, nameplate, stages, parts }: Entry): boolean {
  return (
    device.kind === 'power bank' ||
    nameplate.capacity !== null ||
    stages.some(({ kind }) => kind === 'battery-pack') ||
    parts.some(({ role }) => role === 'cell')
  );
}

function ratedAtOutput(capacity: PrintedCapacity | null): Known<'energy'> {
  if (capacity === null) return missing('no output capacity printed', ['output capacity']);
  if (capacity.energy !== null) return factValue(capacity.energy, { bound: 'use' });
  return applyFormula(batteryEnergy, {
    charge: capacity.charge === null ? missing('output charge not printed') : factValue(capacity.charge, { bound: 'use' }),
    voltage:
      capacity.voltage === null ? missing('output capacity printed without its voltage', ['output voltage']) : factValue(capacity.voltage),
  });
}

/** Energy and time of a recharge, by the input voltage they were taken at. */
function rechargeRows({ measurements }: Entry, delivered: Known<'energy'>): readonly RechargeRow[] {
  const points = measurements.filter(({ subject }) => subject === 'recharge energy' || subject === 'recharge time');
  const inputs = [...new Set(points.map(({ conditions }) => conditions['line'] ?? null))];
  return inputs.map((input): RechargeRow => {
    const at = (subject: MeasuredPoint['subject']): MeasuredPoint | undefined =>
      points.find((point) => point.subject === subject && (point.conditions['line'] ?? null) === input);
    const [taken, lasted] = [at('recharge energy')?.value, at('recharge time')?.value];
    const energy = isOf(taken, 'energy')
      ? factValue(taken, { bound: 'use' })
      : missing('energy taken in not measured', ['recharge energy']);
    return {
      input,
      energy,
      time: isOf(lasted, 'time') ? factValue(lasted, { bound: 'use' }) : missing('time not measured', ['recharge time']),
      roundTrip: applyFormula(energyRatio, { delivered, stored: energy }),
    };
  });
}
