import { UNIT_SPELLINGS } from './unit-table.ts';
import { chosenTolerance } from './tolerance-letter.ts';
import type { Tolerance } from './tolerance-letter.ts';

/**
 * Value of a 3- or 4-digit marking: the last digit counts the zeros (103 → 10 000, 4990 → 499, 000 → 0). In ohms on resistors, in
 * picofarads on capacitors; 8 and 9 as last digit mean × 0.01 and × 0.1 on capacitors. Null for anything else.
 * Source: EIA marking as shown by sharps.lv, GW Instek component tester manual and devutl.com; 8 and 9 are from memory.
 */
export function valueOfDigitCode(code: string): number | null {
  if (!/^\d{3,4}$/.test(code)) return null;
  return Number(`${code.slice(0, -1)}e${code.slice(-1)}`);
}

/** A capacitor marking: capacitance in farads, tolerance where a letter gives one. */
export interface CapacitorCode {
  readonly farads: number;
  /** Weight of the last significant digit, in farads. */
  readonly resolution: number;
  readonly tolerance: Tolerance | null;
}

/** Reads a capacitor marking: 104, 104K, 472J; small values with a point letter are IEC 60062 codes and not read here. */
export function readCapacitorCode(code: string): CapacitorCode | null {
  const match = /^(\d{2})(\d)([A-Z])?$/.exec(code);
  const picofarad = UNIT_SPELLINGS.get('pF')?.[0];
  if (match === null || picofarad === undefined) return null;
  const [, digits = '', zeros = '', letter = ''] = match;
  const exponent = zeros === '9' ? -1 : zeros === '8' ? -2 : Number(zeros);
  const tolerance = letter === '' ? null : chosenTolerance(letter, picofarad, Number(`${digits}e${exponent}`));
  if (letter !== '' && tolerance === null) return null;
  return { farads: Number(`${digits}e${exponent - 12}`), resolution: Number(`1e${exponent - 12}`), tolerance };
}
