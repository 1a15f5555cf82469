import type { Dimension } from '../units/dimension.ts';
import type { Value } from '../values/value.ts';

/** Bench loggers resolve more digits than they hold; four is what a good one holds (common practice). */
const MOST_DIGITS = 4;

/** What a value that was read out of a log is made with. */
export interface LoggedFrom {
  readonly dimension: Dimension;
  /** Weight of the last digit, SI. */
  readonly resolution: number;
  /** How it was read: "mean of "U(V)" in c1.csv". */
  readonly written: string;
  /** Data path of the log in the entry: "logs.full-load". */
  readonly at: string;
}

/** A number out of a log as a measured value, with no more digits than the log writes and an instrument holds. */
export function loggedValue<D extends Dimension>(
  dimension: D,
  nominal: number,
  from: Omit<LoggedFrom, 'dimension'>,
  span: { readonly low: number; readonly high: number } = { low: nominal, high: nominal },
): Value<D> {
  // Binary noise of the scaling is not a digit of the log.
  const [low, middle, high] = [span.low, nominal, span.high].map((number) => Number(number.toPrecision(12)));
  return {
    dimension,
    low: low ?? nominal,
    nominal: middle ?? nominal,
    high: high ?? nominal,
    significant: digitsOf(nominal, from.resolution),
    origin: { evidence: 'measured', written: from.written, at: from.at },
  };
}

function digitsOf(nominal: number, resolution: number): number {
  if (nominal === 0 || !(resolution > 0)) return 1;
  const digits = Math.floor(Math.log10(Math.abs(nominal)) + 1e-9) - Math.floor(Math.log10(resolution) + 1e-9) + 1;
  return Math.min(MOST_DIGITS, Math.max(1, digits));
}
