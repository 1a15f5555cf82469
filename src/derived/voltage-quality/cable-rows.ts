import type { CableUsed, Entry } from '../../entry/entry.ts';
import { cableVoltageDrop } from '../../formulas/cable/cable-voltage-drop.ts';
import { measuredDrop } from '../../formulas/cable/measured-drop.ts';
import { resistanceOfDrop } from '../../formulas/cable/resistance-of-drop.ts';
import { applyFormula } from '../../values/apply-formula.ts';
import { isMissing, type Known } from '../../values/value.ts';
import { cableResistance } from '../cable-end.ts';
import { toLastDigit, voltageReadings, type VoltageReading } from './voltage-readings.ts';

/** One voltage at the port and at the end of its cable, at the same current. */
export interface CableRow {
  readonly port: string | null;
  readonly set: Known<'voltage'>;
  readonly current: Known<'current'>;
  readonly near: Known<'voltage'>;
  readonly far: Known<'voltage'>;
  readonly drop: Known<'voltage'>;
  /** Resistance that the drop implies, contacts included. */
  readonly resistance: Known<'resistance'>;
  readonly cable: CableUsed | null;
  /** What length and gauge of the cable come to. */
  readonly own: { readonly resistance: Known<'resistance'>; readonly drop: Known<'voltage'> } | null;
}

/** How far two currents may differ to count as the same, as a share of them. */
const SAME_CURRENT = 0.02;

/** Every reading at the end of a cable that has one at the connector of the same port, setting and current; one at the same line first. */
export function cableRows(entry: Entry): readonly CableRow[] {
  const readings = voltageReadings(entry);
  return readings.flatMap((far): readonly CableRow[] => {
    if (far.place !== 'cable end') return [];
    const fitting = readings.filter((near) => near.place === 'connector' && isSamePoint(near, far));
    const near = fitting.find(({ line }) => line === far.line) ?? fitting[0];
    return near === undefined ? [] : [rowOf(near, far)];
  });
}

function isSamePoint(near: VoltageReading, far: VoltageReading): boolean {
  if (near.port !== far.port || isMissing(near.set) || isMissing(far.set) || isMissing(near.current) || isMissing(far.current))
    return false;
  const isCurrent = Math.abs(near.current.nominal - far.current.nominal) <= SAME_CURRENT * far.current.nominal;
  return near.set.nominal === far.set.nominal && isCurrent && far.current.nominal > 0;
}

function rowOf(near: VoltageReading, far: VoltageReading): CableRow {
  const drop = applyFormula(measuredDrop, {
    near: toLastDigit(near.value, near.fact.quantity.resolution),
    far: toLastDigit(far.value, far.fact.quantity.resolution),
  });
  const { cable } = far;
  const current = asSet(far.current);
  const own = cable === null ? null : cableResistance(cable);
  return {
    ...{ port: far.port, set: far.set, current, near: near.value, far: far.value, drop, cable },
    resistance: applyFormula(resistanceOfDrop, { drop, current }),
    own: own === null ? null : { resistance: own, drop: applyFormula(cableVoltageDrop, { resistance: own, current }) },
  };
}

/** A current that is set on a load is good to three digits, however few are written: "3 A" is 3.00 A. */
function asSet(current: Known<'current'>): Known<'current'> {
  return isMissing(current) ? current : { ...current, significant: Math.max(3, current.significant) };
}
