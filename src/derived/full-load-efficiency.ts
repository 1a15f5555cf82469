import type { EfficiencyPoint, Entry } from '../entry/entry.ts';
import { isMissing, type Known, type Value } from '../values/value.ts';
import { factValue } from './fact-value.ts';

/** From this share of the rated power a measured point counts as full load. */
const FULL_LOAD = 0.95;

/** A line voltage up to this times the lowest printed one stands for it: 115 V for 90 V, never 230 V. */
const NEAR_LOWEST_LINE = 1.36;

/** Efficiency of the whole device as measured at full load near the lowest line; null where no point says it. */
export function fullLoadEfficiency(entry: Entry, lowest: Known<'voltage'>, power: Known<'power'>): Value<'ratio'> | null {
  const point = entry.efficiency.find(
    (candidate) =>
      candidate.statistic === 'point' && candidate.of === null && isFullLoad(candidate, power) && isNearLowest(candidate, lowest),
  );
  if (point === undefined || point.efficiency === null) return null;
  const value = factValue(point.efficiency);
  return isMissing(value) || value.low <= 0 || value.high > 1 ? null : value;
}

function isNearLowest(point: EfficiencyPoint, lowest: Known<'voltage'>): boolean {
  return point.line !== null && !isMissing(lowest) && point.line.quantity.nominal <= NEAR_LOWEST_LINE * lowest.nominal;
}

function isFullLoad(point: EfficiencyPoint, power: Known<'power'>): boolean {
  const { load, current } = point;
  if (load?.quantity.dimension === 'ratio') return load.quantity.nominal >= FULL_LOAD;
  const volts = point.measuredOutput ?? point.output;
  const drawn = volts === null || current === null ? null : volts.quantity.nominal * current.quantity.nominal;
  const watts = load?.quantity.dimension === 'power' ? load.quantity.nominal : drawn;
  return watts !== null && !isMissing(power) && watts >= FULL_LOAD * power.nominal;
}
