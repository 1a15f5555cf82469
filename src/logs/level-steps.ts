import { usualStep } from './time-gaps.ts';

/** A level of this share of the highest one is a step (common practice); regulation and noise stay below. */
const STEP_SHARE = 0.05;
/** And this many times the usual change from row to row. */
const NOISE_TIMES = 12;
/** Seconds of rows that make a level on either side, and their least and greatest count. */
const LEVEL_SECONDS = 0.5;
const [FEWEST_ROWS, MOST_ROWS] = [3, 25];

/**
 * Rows at which a column goes to another level: the means of the rows on both sides differ, and half of the difference lies between two
 * neighbouring rows. A ramp has no step. Each row is the first one of the new level; in order.
 */
export function levelSteps(time: Float64Array, values: Float64Array): readonly number[] {
  const side = Math.min(MOST_ROWS, Math.max(FEWEST_ROWS, Math.round(LEVEL_SECONDS / Math.max(usualStep(time), 1e-9))));
  if (values.length < 2 * side) return [];
  const sums = runningSums(values);
  const least = leastStep(values);
  const steps: number[] = [];
  let best = -1;
  let bestChange = 0;
  for (let row = side; row <= values.length - side; row += 1) {
    const change = Math.abs(sum(sums, row, row + side) - sum(sums, row - side, row)) / side;
    if (change > least && change > bestChange) {
      best = row;
      bestChange = change;
    }
    const isOver = best !== -1 && (change <= least || row - best > side || row === values.length - side);
    if (!isOver) continue;
    if (isSharp(values, best, bestChange)) steps.push(best);
    best = -1;
    bestChange = 0;
  }
  return steps;
}

function runningSums(values: Float64Array): Float64Array {
  const sums = new Float64Array(values.length + 1);
  let last = 0;
  for (let row = 0; row < values.length; row += 1) {
    const value = values[row] ?? Number.NaN;
    if (value === value) last = value;
    sums[row + 1] = (sums[row] ?? 0) + last;
  }
  return sums;
}

function sum(sums: Float64Array, from: number, to: number): number {
  return (sums[to] ?? 0) - (sums[from] ?? 0);
}

function leastStep(values: Float64Array): number {
  let most = 0;
  for (const value of values) if (Math.abs(value) > most) most = Math.abs(value);
  const stride = Math.max(1, Math.floor(values.length / 4096));
  const changes: number[] = [];
  for (let row = 1; row < values.length; row += stride) {
    const change = Math.abs((values[row] ?? 0) - (values[row - 1] ?? 0));
    if (!Number.isNaN(change)) changes.push(change);
  }
  changes.sort((one, other) => one - other);
  return Math.max(STEP_SHARE * most, NOISE_TIMES * (changes[Math.floor(changes.length / 2)] ?? 0));
}

/** Whether half of the change lies between two rows next to the place. */
function isSharp(values: Float64Array, row: number, change: number): boolean {
  let most = 0;
  for (let at = row - 1; at <= row + 1; at += 1) most = Math.max(most, Math.abs((values[at] ?? 0) - (values[at - 1] ?? 0)) || 0);
  return most >= change / 2;
}
