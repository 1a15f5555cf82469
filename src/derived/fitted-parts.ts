import type { Entry, Part } from '../entry/entry.ts';
import type { Dimension } from '../units/dimension.ts';
import { missing } from '../values/missing.ts';
import type { Known, Missing } from '../values/value.ts';

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

/** Most pieces of one key that anything is computed from. */
const MOST_PIECES = 64;

/** Why nothing is computed from a key whose count is beyond belief; null where the count may be. `part-count-plausible` reports it. */
export function countBeyondBelief(part: Part): Missing | null {
  const count = pieces(part);
  if (count <= MOST_PIECES) return null;
  const names = part.references.join(', ');
  return missing(`${String(count)} pieces of ${names} are more than an adapter holds`, [`count of ${names}`]);
}

/** A value of one piece, once for each piece of the key; where the count is beyond belief, one missing value that says so. */
export function perPiece<D extends Dimension>(part: Part, one: Known<D>): readonly Known<D>[] {
  const beyond = countBeyondBelief(part);
  return beyond === null ? Array.from({ length: pieces(part) }, () => one) : [beyond];
}
