import type { Correction } from '../entry/entry.ts';

/** Letters of a drawing's revisions; I and O are left out since they read as digits (common practice in drawing offices). */
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/** Revision of a sheet: A as published, one letter on for every date with corrections; AA, AB and so on after Z. */
export function revisionLetter(corrections: readonly Correction[]): string {
  return lettersOf(new Set(corrections.map((correction) => correction.date)).size);
}

function lettersOf(index: number): string {
  const last = LETTERS.charAt(index % LETTERS.length);
  return index < LETTERS.length ? last : lettersOf(Math.floor(index / LETTERS.length) - 1) + last;
}
