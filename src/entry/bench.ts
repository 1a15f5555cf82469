import type { Dimension } from '../units/dimension.ts';
import type { BenchSubject } from './bench-subjects.ts';

/** Accuracy of an instrument for one quantity: "0.05 % rdg + 3 counts, 1 mV". Numbers are SI, shares are fractions. */
export interface Accuracy {
  readonly quantity: Dimension;
  readonly written: string;
  readonly ofReading: number;
  readonly ofRange: number;
  /** End of the range; null where no share of it is stated. */
  readonly range: number | null;
  readonly counts: number;
  /** Weight of the last place; null leaves it to the digits of the reading as written. */
  readonly resolution: number | null;
  /** A fixed part beside the shares: "1.5 °C", "+ 5 mW". */
  readonly fixed: number;
}

/** One instrument of the bench. */
export interface Instrument {
  /** Name by which entries call it, and its anchor on the bench page. */
  readonly id: string;
  readonly name: string;
  readonly measures: string | null;
  readonly accuracies: readonly Accuracy[];
  /** ISO date of the last calibration. */
  readonly calibrated: string | null;
  readonly note: string | null;
}

/** One way in which something is measured on the bench. */
export interface BenchMethod {
  /** Its anchor on the bench page: "method-ripple-and-noise". */
  readonly id: string;
  /** Name by which entries call it. */
  readonly name: string;
  readonly how: string;
  /** Ids of the instruments that it is done with; empty where it names none. */
  readonly with: readonly string[];
  /** What is always done this way here, so that entries need not say so. */
  readonly of: readonly BenchSubject[];
}

/** What stands on the bench, and how things are done there. */
export interface Bench {
  readonly instruments: readonly Instrument[];
  readonly methods: readonly BenchMethod[];
}

/** A site without a bench file. */
export const NO_BENCH: Bench = { instruments: [], methods: [] };
