import type { Known } from '../../values/value.ts';

/** One test of how long the power lasts: from measured points, or from a log. */
export interface SustainedRun {
  /** Port, or null for the whole device. */
  readonly port: string | null;
  /** Id of the log; null for points. */
  readonly log: string | null;
  readonly line: string | null;
  readonly peak: Known<'power'>;
  /** Missing with "sustained not shown" where the test was shorter than 30 minutes. */
  readonly sustained: Known<'power'>;
  /** Missing where the power did not fall. */
  readonly droppedAfter: Known<'time'>;
  /** How long the test was. */
  readonly tested: Known<'time'>;
  readonly ambient: Known<'temperature'>;
  /** Positions of its points in the entry's measurements; empty for a log. */
  readonly points: readonly number[];
}

/** A test shorter than this shows nothing about lasting: cases of this size take that long to warm up. Common practice; seconds. */
export const SHORTEST_TEST = 1800;

/** Regulation and rounding stay above this share of the peak; a fold-back does not. */
export const HELD_SHARE = 0.95;

/** The reason where a test was too short. */
export const NOT_SHOWN = 'sustained not shown';
