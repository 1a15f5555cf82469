/** Rows around a stretch without rows. */
export interface TimeGap {
  /** Last row before it. */
  readonly row: number;
  readonly from: number;
  readonly to: number;
}

/** A step this many times as long as the usual one is a gap (common practice: a logger that loses single rows has none). */
const GAP_STEPS = 5;
/** Steps that are looked at for the usual one. */
const SAMPLED = 4096;

/** The usual step between rows: the median, of all steps where there are few and of evenly spread ones where there are many. */
export function usualStep(time: Float64Array): number {
  const count = time.length - 1;
  if (count < 1) return 0;
  const taken = Math.min(count, SAMPLED);
  const steps = Float64Array.from({ length: taken }, (_, index) => {
    const row = Math.floor((index * count) / taken);
    return (time[row + 1] ?? 0) - (time[row] ?? 0);
  }).sort();
  return steps[Math.floor((taken - 1) / 2)] ?? 0;
}

/** Stretches without rows that are far longer than the usual step. */
export function timeGaps(time: Float64Array, usual: number): readonly TimeGap[] {
  const gaps: TimeGap[] = [];
  // Two or three rows have no usual step.
  if (time.length < 4) return gaps;
  for (let row = 0; row + 1 < time.length; row += 1) {
    const from = time[row] ?? 0;
    const to = time[row + 1] ?? 0;
    if (to - from > GAP_STEPS * usual) gaps.push({ row, from, to });
  }
  return gaps;
}
