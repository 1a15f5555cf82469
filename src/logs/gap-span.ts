import type { ColumnStatistics } from './column-statistics.ts';
import { timeGaps, type TimeGap } from './time-gaps.ts';

/** Both ends of an integral over time. */
export interface IntegralSpan {
  readonly low: number;
  readonly high: number;
}

/** What of a log the gaps of one column follow from. */
export interface GapFrame {
  readonly time: Float64Array;
  readonly gaps: readonly TimeGap[];
  readonly usual: number;
}

/** Stretches in which a column says nothing: no rows, or blank cells as long as a gap. */
export function columnGaps(values: Float64Array, { rows: filled }: ColumnStatistics, { time, gaps, usual }: GapFrame): readonly TimeGap[] {
  if (filled === values.length) return gaps;
  const rows: number[] = [];
  for (let row = 0; row < values.length; row += 1) if (!Number.isNaN(values[row])) rows.push(row);
  const times = Float64Array.from(rows, (row) => time[row] ?? 0);
  return timeGaps(times, usual).map((gap) => ({ ...gap, row: rows[gap.row] ?? 0 }));
}

/**
 * What is certain of an integral over time: a stretch without numbers was bridged by a straight line, and may have held anything from the
 * lowest to the highest value of the log.
 */
export function gapSpan(values: Float64Array, statistics: ColumnStatistics, frame: GapFrame): IntegralSpan {
  const { integral, lowest, highest } = statistics;
  const span = { low: integral, high: integral };
  for (const { row, from, to } of columnGaps(values, statistics, frame)) {
    const bridged = ((values[row] ?? 0) + (values[firstBehind(values, row)] ?? 0)) / 2;
    if (Number.isNaN(bridged)) continue;
    span.low += (lowest - bridged) * (to - from);
    span.high += (highest - bridged) * (to - from);
  }
  return span;
}

/** The next row that has a number. */
function firstBehind(values: Float64Array, row: number): number {
  let next = row + 1;
  while (next < values.length - 1 && Number.isNaN(values[next])) next += 1;
  return next;
}
