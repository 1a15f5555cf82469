import type { DataPath } from '../diagnostics/finding.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Known, Value } from '../values/value.ts';

/** What one column of a log, or a column computed from others, says over the whole log. */
export interface LogChannel<D extends Dimension = Dimension> {
  /** Word of the entry's `columns`: "voltage", "current", "power", "temperature", "temperature case"; "power" also where it is volts times amperes. */
  readonly quantity: string;
  readonly dimension: D;
  /** Head of the column in the file; null where it is computed from others. */
  readonly head: string | null;
  /** Mean over time, not over rows: rows that stand further apart count more. */
  readonly mean: Value<D>;
  /** The mean without what a gain error leaves open, and whose gain that is; given where the bench states an accuracy. */
  readonly apartFromGain?: { readonly of: string; readonly mean: Value<D> };
  readonly lowest: LogExtreme<D>;
  readonly highest: LogExtreme<D>;
  /** Standard deviation over the rows, n − 1 in the divisor, in the unit of the dimension. */
  readonly deviation: number;
  /** Rows that have a number in this column. */
  readonly rows: number;
  /** Weight of the last digit that the file writes, in the unit of the dimension. */
  readonly resolution: number;
}

/** An exact extreme: a row of the file, never a smoothed one. */
interface LogExtreme<D extends Dimension = Dimension> {
  readonly value: Value<D>;
  /** Seconds from the first row. */
  readonly at: number;
}

/** A stretch without rows, far longer than the usual step between rows. */
export interface LogGap {
  /** Seconds from the first row. */
  readonly from: number;
  readonly to: number;
}

/** A change of level: an event that the author names, or a step that stands in the numbers. */
export interface LogStep {
  /** Seconds from the first row. */
  readonly at: number;
  /** The author's words; null for a step that was only found. */
  readonly event: string | null;
  readonly changes: readonly LogChange[];
}

/** What one quantity did at a step. */
export interface LogChange<D extends Dimension = Dimension> {
  readonly quantity: string;
  readonly before: Value<D>;
  readonly after: Value<D>;
  /** Furthest that it went to either side before it settled. */
  readonly lowest: Value<D>;
  readonly highest: Value<D>;
  /** From the step until it stayed within 5 % of the new level. */
  readonly settling: Known<'time'>;
}

/** How much the load got and for how long. Figures of a log that no power can be told from are missing, with the reason. */
export interface LogPower {
  /** Highest mean over ten seconds. */
  readonly peak: Known<'power'>;
  /** Mean over the last ten minutes under load; missing with "sustained not shown" where the load was on for less than 30 minutes. */
  readonly sustained: Known<'power'>;
  /** Time under load after which the power fell and stayed below 95 % of the peak; missing where it did not fall. */
  readonly droppedAfter: Known<'time'>;
  /** Time from the first to the last row under load. */
  readonly underLoad: Known<'time'>;
}

/** Points of one channel for a plot, reduced so that the shape is kept; both extremes are among them. */
export interface LogCurve {
  readonly quantity: string;
  readonly dimension: Dimension;
  /** Seconds from the first row, and the value in the SI unit of the dimension, in turn for each point. */
  readonly points: readonly (readonly [number, number])[];
}

/** Everything that a log says, of whatever length. Plain data, JSON-safe; times are seconds from the first row. */
export interface LogSummary {
  readonly id: string;
  /** Name of the file beside the entry. */
  readonly file: string;
  readonly path: DataPath;
  readonly port: string | null;
  readonly line: string | null;
  readonly ambient: string | null;
  readonly note: string | null;
  readonly rows: number;
  /** Date and time of the first row as written, where the file has absolute times. */
  readonly start: string | null;
  readonly duration: Value<'time'>;
  /** Usual step between rows, the median; seconds. */
  readonly interval: number;
  readonly gaps: readonly LogGap[];
  readonly channels: readonly LogChannel[];
  /** Integral of the power: delivered by the port, or taken from it. */
  readonly energy: Known<'energy'>;
  /** Integral of the current. */
  readonly charge: Known<'charge'>;
  readonly power: LogPower;
  readonly steps: readonly LogStep[];
  readonly curves: readonly LogCurve[];
}
