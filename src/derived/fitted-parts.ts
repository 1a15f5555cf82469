import type { Entry, Part } from '../entry/entry.ts';

/** Parts of a role that are on the board; places left empty do not count. */
export function fittedParts(entry: Entry, role: string): readonly Part[] {
  return entry.parts.filter((part) => part.role === role && isFitted(part));
}

/** Whether a part is on the board, as far as the author says. */
export function isFitted(part: Part): boolean {
  return part.fitting !== 'not fitted' && part.fitting !== 'absent';
}

/** Pieces that a key stands for: `C21, C22: 2 × 470 µF` is four. */
export function pieces(part: Part): number {
  return Math.max(1, part.references.length) * Math.max(1, Math.floor(part.count));
}
