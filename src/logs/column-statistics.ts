/** What can be said of a column of numbers over rising times, blank cells (`NaN`) left out. */
export interface ColumnStatistics {
  readonly rows: number;
  /** Integral over time by the trapezoidal rule, in units times seconds. */
  readonly integral: number;
  /** Time that the integral covers, from the first number to the last. */
  readonly covered: number;
  /** Mean over time; over rows where all numbers stand at one time. */
  readonly mean: number;
  /** Standard deviation over rows, n − 1 in the divisor; 0 for one row. */
  readonly deviation: number;
  readonly lowest: number;
  readonly highest: number;
  /** Row of the first lowest and the first highest. */
  readonly lowestRow: number;
  readonly highestRow: number;
}

/**
 * One pass over a column. Variance by the updating formulas of Welford (1962), which lose no digits where the mean is large beside the
 * spread. Null where the column has no number.
 */
export function columnStatistics(time: Float64Array, values: Float64Array): ColumnStatistics | null {
  let rows = 0;
  let mean = 0;
  let squares = 0;
  let integral = 0;
  let [firstTime, lastTime, lastValue] = [0, 0, 0];
  let [lowest, highest, lowestRow, highestRow] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, 0];
  for (let row = 0; row < values.length; row += 1) {
    const value = values[row] ?? Number.NaN;
    const at = time[row] ?? Number.NaN;
    if (value !== value) continue;
    rows += 1;
    const away = value - mean;
    mean += away / rows;
    squares += away * (value - mean);
    if (rows === 1) firstTime = at;
    else integral += ((value + lastValue) / 2) * (at - lastTime);
    if (value < lowest) {
      lowest = value;
      lowestRow = row;
    }
    if (value > highest) {
      highest = value;
      highestRow = row;
    }
    lastTime = at;
    lastValue = value;
  }
  if (rows === 0) return null;
  const covered = lastTime - firstTime;
  const overTime = covered > 0 ? integral / covered : mean;
  const deviation = rows > 1 ? Math.sqrt(Math.max(0, squares) / (rows - 1)) : 0;
  return { rows, integral, covered, mean: overTime, deviation, lowest, highest, lowestRow, highestRow };
}
