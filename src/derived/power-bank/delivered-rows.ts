import type { Entry, Fact, MeasuredPoint } from '../../entry/entry.ts';
import { methodClass } from '../../entry/method-class.ts';
import { batteryEnergy } from '../../formulas/energy/battery-energy.ts';
import { energyRatio } from '../../formulas/energy/energy-ratio.ts';
import type { LogSummary } from '../../logs/log-summary.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { missing } from '../../values/missing.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { conditionValue } from '../condition-value.ts';
import { factValue, isOf } from '../fact-value.ts';
import type { DeliveredRow, PowerBankFigures } from './power-bank-figures.ts';

/** Two output voltages within this are the same one under load. */
const SAME_VOLTAGE = 0.1;

/** Energy that came out, from measured points and from logs of a whole discharge. */
export function deliveredRows(
  entry: Entry,
  logs: readonly LogSummary[],
  stored: Known<'energy'>,
  rated: { readonly voltage: Fact<'voltage'> | null; readonly energy: Known<'energy'> },
): readonly DeliveredRow[] {
  const row = (energy: Known<'energy'>, volts: Known<'voltage'>): Pick<DeliveredRow, 'energy' | 'ratio' | 'ofRated'> => ({
    energy,
    ratio: applyFormula(energyRatio, { delivered: energy, stored }),
    ofRated: isSame(volts, rated.voltage)
      ? applyFormula(energyRatio, { delivered: energy, stored: rated.energy })
      : missing('nothing is rated at this voltage'),
  });
  const points = entry.measurements.flatMap((point, index): DeliveredRow[] => {
    if (point.subject !== 'delivered energy' || methodClass(point.method, point.instrument) === 'reported') return [];
    const volts = conditionValue(point, 'output', 'voltage', 'output voltage');
    return [{ output: point.conditions['output'] ?? null, log: null, index, ...row(energyOf(point, volts), volts) }];
  });
  const discharges = logs.filter(isWholeDischarge).map((log): DeliveredRow => {
    const volts = log.channels.find(({ quantity }) => quantity === 'voltage')?.mean;
    const mean: Known<'voltage'> = volts !== undefined && isVoltage(volts) ? volts : missing('no voltage in the log');
    const output = isMissing(mean) ? null : `${String(Number(mean.nominal.toPrecision(3)))} V`;
    return { output, log: log.id, index: null, ...row(log.energy, mean) };
  });
  return [...points, ...discharges];
}

function isVoltage(known: Known): known is Known<'voltage'> {
  return isMissing(known) || known.dimension === 'voltage';
}

/** A log counts as a discharge by its author's word only: a log of ten minutes is none. */
function isWholeDischarge({ id, note, energy }: LogSummary): boolean {
  return (
    !isMissing(energy) && /\b(?:discharge|run[- ]?down|emptied|full to empty)\b/iu.test(`${id.replaceAll(/[-_]/gu, ' ')} ${note ?? ''}`)
  );
}

/** Charge counts at the voltage at which it came out; without one it is no energy. */
function energyOf({ value }: MeasuredPoint, voltage: Known<'voltage'>): Known<'energy'> {
  if (isOf(value, 'energy')) return factValue(value, { bound: 'use' });
  if (!isOf(value, 'charge')) return missing('not an energy');
  return applyFormula(batteryEnergy, { charge: factValue(value, { bound: 'use' }), voltage });
}

function isSame(volts: Known<'voltage'>, rated: Fact<'voltage'> | null): boolean {
  if (isMissing(volts) || rated === null) return false;
  return Math.abs(volts.nominal / rated.quantity.nominal - 1) <= SAME_VOLTAGE;
}

/** The greatest energy that was delivered, whatever the voltage. */
export function greatestDelivered(rows: PowerBankFigures['delivered']): Known<'energy'> {
  return rows.reduce<Known<'energy'>>(
    (most, { energy }) => {
      if (isMissing(energy)) return most;
      return isMissing(most) || energy.nominal > most.nominal ? energy : most;
    },
    missing('delivered energy not measured', ['delivered energy']),
  );
}
