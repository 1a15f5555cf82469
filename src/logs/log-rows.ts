import type { Dimension } from '../units/dimension.ts';

/** One column of a log in SI units; `NaN` where a cell was blank. */
export interface LogSeries {
  readonly quantity: string;
  readonly dimension: Dimension;
  /** Head in the file; null for a column computed from others. */
  readonly head: string | null;
  readonly values: Float64Array;
  /** Weight of the last written digit in SI units. */
  readonly resolution: number;
}

/** All rows of a log that could be read. */
export interface LogRows {
  /** Seconds from the first row, rising. */
  readonly time: Float64Array;
  readonly series: readonly LogSeries[];
  /** Time of the first row as written, where it is a date and time; null else. */
  readonly start: string | null;
  /** Line of a row in the file. */
  readonly lineOf: (row: number) => number;
}

/** The column of a quantity. */
export function seriesOf(rows: LogRows, quantity: string): LogSeries | null {
  return rows.series.find((series) => series.quantity === quantity) ?? null;
}
