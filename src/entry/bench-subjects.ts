import type { MeasuredSubject } from './entry.ts';

/** What a method of the bench can be for: a kind of measured figure, efficiency, a log, distances of insulation, the size or the mass. */
export type BenchSubject = MeasuredSubject | 'efficiency' | 'log' | 'insulation' | 'mass';

const SUBJECTS: Readonly<Record<BenchSubject, true>> = {
  efficiency: true,
  standby: true,
  ripple: true,
  thermal: true,
  'touch current': true,
  'touch voltage': true,
  inrush: true,
  'hold-up': true,
  'pin voltage': true,
  stress: true,
  frequency: true,
  regulation: true,
  droop: true,
  'sustained power': true,
  'delivered energy': true,
  'recharge energy': true,
  'recharge time': true,
  log: true,
  insulation: true,
  mass: true,
};

/** All of them, in the order of the format. */
export const BENCH_SUBJECTS: readonly BenchSubject[] = Object.keys(SUBJECTS).filter(isBenchSubject);

/** Whether a word is one of them. */
export function isBenchSubject(word: string): word is BenchSubject {
  return Object.hasOwn(SUBJECTS, word);
}
