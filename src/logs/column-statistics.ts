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

/** Null where the column has no number. The deviation is taken about the mean in a second pass, so that a large mean costs no digits. */
export function columnStatistics(time: Float64Array, values: Float64Array): ColumnStatistics | null {
  let [rows, sum, integral] = [0, 0, 0];
  let [firstTime, lastTime, lastValue] = [0, 0, 0];
  let [lowest, highest, lowestRow, highestRow] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, 0];
  for (let row = 0; row < values.length; row += 1) {
    const value = values[row] ?? Number.NaN;
    const at = time[row] ?? Number.NaN;
    if (value !== value) continue;
    if (rows === 0) firstTime = at;
    else integral += ((value + lastValue) / 2) * (at - lastTime);
    rows += 1;
    sum += value;
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
  const mean = covered > 0 ? integral / covered : sum / rows;
  const deviation = deviationFrom(values, sum / rows, rows);
  return { rows, integral, covered, mean, deviation, lowest, highest, lowestRow, highestRow };
}

function deviationFrom(values: Float64Array, mean: number, rows: number): number {
  let squares = 0;
  for (let row = 0; row < values.length; row += 1) {
    const away = (values[row] ?? Number.NaN) - mean;
    if (away === away) squares += away * away;
  }
  return rows > 1 ? Math.sqrt(squares / (rows - 1)) : 0;
}
