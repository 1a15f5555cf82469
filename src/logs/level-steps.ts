import { meanOfRows } from './mean-of-rows.ts';
import { usualStep } from './time-gaps.ts';

/** A level of this share of the highest one is a step (common practice); regulation and noise stay below. */
const STEP_SHARE = 0.05;
/** And this many times the usual change from row to row. */
const NOISE_TIMES = 12;
/** Seconds of rows that make a level on either side, and their least and greatest count. */
const LEVEL_SECONDS = 0.5;
const [FEWEST_ROWS, MOST_ROWS] = [3, 25];
/** Changes from row to row that are looked at for the usual one. */
const SAMPLED = 4096;

/**
 * Rows at which a column goes to another level: the means of the rows on both sides differ, and half of the difference lies between two
 * neighbouring rows. A ramp has no step. Each row is the first one of the new level; in order.
 *
 * @param most Greatest absolute value of the column.
 */
export function levelSteps(time: Float64Array, values: Float64Array, most: number): readonly number[] {
  const side = Math.min(MOST_ROWS, Math.max(FEWEST_ROWS, Math.round(LEVEL_SECONDS / Math.max(usualStep(time), 1e-9))));
  const least = Math.max(STEP_SHARE * most, NOISE_TIMES * usualChange(values));
  const steps: { readonly row: number; readonly change: number }[] = [];
  let before = Number.NaN;
  for (let row = 0; row < values.length; row += 1) {
    const value = values[row] ?? Number.NaN;
    if (value !== value) continue;
    const jump = Math.abs(value - before);
    before = value;
    if (!(jump >= least / 2)) continue;
    const change = Math.abs(levelOf(values, row, row + side) - levelOf(values, row - side, row));
    if (!(change >= least) || jump < change / 2) continue;
    const last = steps.at(-1);
    const isSame = last !== undefined && row - last.row <= side;
    if (isSame && change <= last.change) continue;
    if (isSame) steps.pop();
    steps.push({ row, change });
  }
  return steps.map(({ row }) => row);
}

/** Mean of the rows of one side; `NaN` where the column does not reach so far, or has no number there. */
function levelOf(values: Float64Array, from: number, to: number): number {
  return from < 0 || to > values.length ? Number.NaN : (meanOfRows(values, from, to) ?? Number.NaN);
}

/** The median change from one row to the next, of evenly spread rows. */
function usualChange(values: Float64Array): number {
  const stride = Math.max(1, Math.floor(values.length / SAMPLED));
  const changes: number[] = [];
  for (let row = 1; row < values.length; row += stride) {
    const change = Math.abs((values[row] ?? Number.NaN) - (values[row - 1] ?? Number.NaN));
    if (change === change) changes.push(change);
  }
  changes.sort((one, other) => one - other);
  return changes[Math.floor(changes.length / 2)] ?? 0;
}
