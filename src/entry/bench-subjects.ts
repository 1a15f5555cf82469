import type { MeasuredSubject } from './entry.ts';

/**
 * What a method of the bench can be for: a kind of measured figure, efficiency, a log, or what was measured in a section of the format:
 * insulation, size, mass, the ports and their offers, the shares, the values of stages and parts, the voltage after discharging.
 */
export type BenchSubject =
  MeasuredSubject | 'efficiency' | 'log' | 'insulation' | 'size' | 'mass' | 'ports' | 'sharing' | 'stages' | 'parts' | 'discharged';

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
  size: true,
  mass: true,
  ports: true,
  sharing: true,
  stages: true,
  parts: true,
  discharged: true,
};

/** All of them, in the order of the format. */
export const BENCH_SUBJECTS: readonly BenchSubject[] = Object.keys(SUBJECTS).filter(isBenchSubject);

/** Whether a word is one of them. */
export function isBenchSubject(word: string): word is BenchSubject {
  return Object.hasOwn(SUBJECTS, word);
}
