import { largestTriangles } from './largest-triangles.ts';
import type { LogCurve } from './log-summary.ts';
import type { LogSeries } from './log-rows.ts';

/** As many points as a figure has pixels to show them. */
const POINTS = 480;

/** Points of a column for a plot: the largest triangles, and both exact extremes wherever those left them out. */
export function logCurve(time: Float64Array, series: LogSeries, extremes: readonly number[], hasBlanks: boolean): LogCurve {
  const { quantity, dimension, values } = series;
  const rows = hasBlanks ? Uint32Array.from(values.keys()).filter((row) => !Number.isNaN(values[row])) : null;
  const [at, numbers] =
    rows === null ? [time, values] : [Float64Array.from(rows, (row) => time[row] ?? 0), Float64Array.from(rows, (row) => values[row] ?? 0)];
  const kept = [...largestTriangles(at, numbers, POINTS)].map((place) => rows?.[place] ?? place);
  const all = [...new Set([...kept, ...extremes])].sort((one, other) => one - other);
  return { quantity, dimension, points: all.map((row) => [trim(time[row] ?? 0), trim(values[row] ?? 0)] as const) };
}

/** Without the binary noise of the scaling. */
function trim(number: number): number {
  return Number(number.toPrecision(10));
}
