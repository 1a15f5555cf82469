import { rowFrom } from './level-change.ts';

/** How a power went over time, in watts and seconds. */
export interface PowerCourse {
  /** Highest mean over ten seconds. */
  readonly peak: number;
  /** Seconds from the first row at which the load came on and went off. */
  readonly loadFrom: number;
  readonly loadTo: number;
  /** Mean over the last ten minutes under load. */
  readonly atTheEnd: number;
  /** Seconds under load after which the power fell below 95 % of the peak and stayed there for a minute; null where it did not. */
  readonly droppedAfter: number | null;
}

/** A peak is what lasts this long: inrush into a load's capacitors does not. Seconds. */
const PEAK_WINDOW = 10;
/** Below this share of the highest row the load is off. */
const LOAD_SHARE = 0.05;
/** Seconds at the end of the load whose mean is the power that is sustained. */
const END_WINDOW = 600;
/** Regulation and rounding stay above this share of the peak; a fold-back does not. */
const DROP_SHARE = 0.95;
/** Seconds that a fall lasts to be one. */
const DROP_WINDOW = 60;

/** Follows a power column; null where it has no number above zero. Blank cells are `NaN`. */
export function powerCourse(time: Float64Array, power: Float64Array): PowerCourse | null {
  const kept = withoutBlanks(time, power);
  const load = loadOf(kept.power);
  if (load === null) return null;
  const [at, watts] = [kept.time.subarray(load.from, load.to + 1), kept.power.subarray(load.from, load.to + 1)];
  const means = runningMeans(at, watts, PEAK_WINDOW);
  const peak = highest(at, watts, means);
  const [loadFrom, loadTo] = [at[0] ?? 0, at.at(-1) ?? 0];
  return { peak, loadFrom, loadTo, atTheEnd: meanFrom(at, watts, loadTo - END_WINDOW), droppedAfter: dropAfter(at, watts, means, peak) };
}

function withoutBlanks(time: Float64Array, power: Float64Array): { readonly time: Float64Array; readonly power: Float64Array } {
  if (!hasBlanks(power)) return { time, power };
  return { time: time.filter((_, row) => !Number.isNaN(power[row])), power: power.filter((watts) => !Number.isNaN(watts)) };
}

function hasBlanks(values: Float64Array): boolean {
  for (let row = 0; row < values.length; row += 1) if (Number.isNaN(values[row])) return true;
  return false;
}

/** First and last row under load. */
function loadOf(power: Float64Array): { readonly from: number; readonly to: number } | null {
  let most = 0;
  for (let row = 0; row < power.length; row += 1) most = Math.max(most, power[row] ?? 0);
  if (most === 0) return null;
  const isOn = (watts: number): boolean => watts >= LOAD_SHARE * most;
  return { from: power.findIndex(isOn), to: power.findLastIndex(isOn) };
}

/** Mean of the rows in the seconds before each row, itself included. */
function runningMeans(time: Float64Array, power: Float64Array, window: number): Float64Array {
  const means = new Float64Array(power.length);
  let first = 0;
  let sum = 0;
  for (let row = 0; row < power.length; row += 1) {
    sum += power[row] ?? 0;
    while ((time[first] ?? 0) <= (time[row] ?? 0) - window && first < row) {
      sum -= power[first] ?? 0;
      first += 1;
    }
    means[row] = sum / (row - first + 1);
  }
  return means;
}

/** The highest of the means over a whole window; where rows stand further apart than that, the highest row. */
function highest(time: Float64Array, power: Float64Array, means: Float64Array): number {
  const [from, to] = [time[0] ?? 0, time.at(-1) ?? 0];
  const isSparse = (to - from) / Math.max(1, time.length - 1) > PEAK_WINDOW / 2;
  if (isSparse) return power.reduce((most, watts) => Math.max(most, watts), 0);
  const isShort = to - from < PEAK_WINDOW;
  let most = 0;
  for (let row = 0; row < means.length; row += 1) {
    const isWhole = isShort ? row === means.length - 1 : (time[row] ?? 0) - from >= PEAK_WINDOW;
    if (isWhole) most = Math.max(most, means[row] ?? 0);
  }
  return most;
}

/** Mean over time from a moment to the end. */
function meanFrom(time: Float64Array, power: Float64Array, from: number): number {
  const first = from < (time[0] ?? 0) ? 0 : rowFrom(time, from);
  let integral = 0;
  for (let row = first + 1; row < time.length; row += 1)
    integral += (((power[row] ?? 0) + (power[row - 1] ?? 0)) / 2) * ((time[row] ?? 0) - (time[row - 1] ?? 0));
  const covered = (time.at(-1) ?? 0) - (time[first] ?? 0);
  return covered > 0 ? integral / covered : (power.at(-1) ?? 0);
}

function dropAfter(time: Float64Array, power: Float64Array, means: Float64Array, peak: number): number | null {
  const level = DROP_SHARE * peak;
  const start = means.findIndex((mean) => mean >= level);
  let below = -1;
  for (let row = Math.max(0, start); row < means.length; row += 1) {
    if ((means[row] ?? 0) >= level) below = -1;
    else if (below === -1) below = row;
    const isLast = row === means.length - 1;
    if (below !== -1 && ((time[row] ?? 0) - (time[below] ?? 0) >= DROP_WINDOW || (isLast && below === row && isSparseEnd(time))))
      return (time[rowOfFall(time, power, below, level)] ?? 0) - (time[0] ?? 0);
  }
  return null;
}

/** Rows more than a minute apart: one row below the level is a fall that lasts. */
function isSparseEnd(time: Float64Array): boolean {
  return (time.at(-1) ?? 0) - (time.at(-2) ?? 0) >= DROP_WINDOW;
}

/** The mean follows the power by some seconds: the row behind the last one that still had the level. */
function rowOfFall(time: Float64Array, power: Float64Array, below: number, level: number): number {
  const earliest = (time[below] ?? 0) - PEAK_WINDOW;
  let row = below;
  while (row > 0 && (time[row - 1] ?? 0) > earliest && (power[row - 1] ?? 0) < level) row -= 1;
  return row;
}
