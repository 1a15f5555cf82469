import type { Unit } from './unit.ts';

/** How far a value may lie below and above what is written: as fractions of it, or as numbers in the unit written. */
export interface Tolerance {
  readonly kind: 'fraction' | 'absolute';
  readonly below: number;
  readonly above: number;
}

/**
 * Tolerance letters of IEC 60062 as fractions below and above.
 * Sources: https://www.3bmdesign.com/Responsive/Capacitor.html; riansanderson.blogspot.com "Capacitor tolerances" (2005-07).
 */
const LETTERS: Readonly<Record<string, readonly [number, number]>> = {
  B: [0.001, 0.001],
  C: [0.0025, 0.0025],
  D: [0.005, 0.005],
  F: [0.01, 0.01],
  G: [0.02, 0.02],
  J: [0.05, 0.05],
  K: [0.1, 0.1],
  M: [0.2, 0.2],
  N: [0.3, 0.3],
  Q: [0.1, 0.3],
  T: [0.1, 0.5],
  S: [0.2, 0.5],
  Z: [0.2, 0.8],
};

/** Below 10 pF the letters are picofarads (same sources). */
const PICOFARADS: Readonly<Record<string, number>> = { B: 0.1, C: 0.25, D: 0.5, F: 1, G: 2 };

/** The tolerance that a letter means, or null for a letter that is none. */
function toleranceOfLetter(letter: string): Tolerance | null {
  const pair = LETTERS[letter];
  return pair === undefined ? null : { kind: 'fraction', below: pair[0], above: pair[1] };
}

/** The tolerance that a letter means behind this value; small capacitors take theirs in picofarads. */
export function chosenTolerance(letter: string, unit: Unit, number: number): Tolerance | null {
  const picofarads = PICOFARADS[letter];
  if (picofarads !== undefined && unit.symbol === 'pF' && number < 10) return { kind: 'absolute', below: picofarads, above: picofarads };
  return toleranceOfLetter(letter);
}
