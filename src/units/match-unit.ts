import { isDigitAt, isLetterAt } from './characters.ts';
import type { Dimension } from './dimension.ts';
import { REFUSED_SPELLINGS, UNIT_SPELLINGS } from './unit-table.ts';
import type { RefusedSpelling, Unit } from './unit.ts';

interface SpellingNode {
  readonly next: Map<number, SpellingNode>;
  units: readonly Unit[] | null;
  refusal: RefusedSpelling | null;
}

/** A unit, or a refused spelling, that stands at a place in a text. */
export interface UnitMatch {
  readonly unit: Unit | null;
  readonly refusal: RefusedSpelling | null;
  readonly end: number;
}

const ROOT: SpellingNode = spellingTree();

function newNode(): SpellingNode {
  return { next: new Map(), units: null, refusal: null };
}

function spellingTree(): SpellingNode {
  const root = newNode();
  for (const [spelling, units] of UNIT_SPELLINGS) nodeFor(root, spelling).units = units;
  for (const [spelling, refusal] of REFUSED_SPELLINGS) nodeFor(root, spelling).refusal = refusal;
  return root;
}

function nodeFor(root: SpellingNode, spelling: string): SpellingNode {
  let node = root;
  for (let index = 0; index < spelling.length; index += 1) {
    const code = spelling.charCodeAt(index);
    const known = node.next.get(code) ?? newNode();
    node.next.set(code, known);
    node = known;
  }
  return node;
}

/**
 * The longest unit spelling that stands at this index as a whole: no letter may follow it, save the breaking-capacity letter of a
 * fuse after its amperes ("3.15AL250V"). `wanted` decides spellings that several dimensions share ("K", "C", "m").
 */
export function matchUnit(text: string, index: number, wanted: Dimension | null, isFuse: boolean): UnitMatch | null {
  let node: SpellingNode | undefined = ROOT;
  let best: UnitMatch | null = null;
  for (let at = index; node !== undefined; at += 1) {
    const match = matchAt(node, text, at, wanted, isFuse);
    if (match !== null) best = match;
    const code = text.charCodeAt(at);
    node = node.next.get(code === 0xa0 ? 32 : code);
  }
  return best;
}

function matchAt(node: SpellingNode, text: string, at: number, wanted: Dimension | null, isFuse: boolean): UnitMatch | null {
  if (node.units === null && node.refusal === null) return null;
  const unit = node.units === null ? null : chooseUnit(node.units, wanted);
  if (unit === null && node.refusal === null) return null;
  // Behind a fuse's speed letter, "3.15AH250V" is amperes and a breaking capacity, not a charge.
  if (isFuse && unit?.dimension === 'charge') return null;
  if (isDigitAt(text, at) && unit?.isLetterCode === true) return null;
  if (isLetterAt(text, at) && !isBreakingCapacityAt(text, at, unit, isFuse)) return null;
  return { unit, refusal: unit === null ? node.refusal : null, end: at };
}

function chooseUnit(units: readonly Unit[], wanted: Dimension | null): Unit | null {
  for (const unit of units) if (unit.dimension === wanted) return unit;
  for (const unit of units) if (!unit.onlyWhereWanted) return unit;
  return null;
}

function isBreakingCapacityAt(text: string, at: number, unit: Unit | null, isFuse: boolean): boolean {
  if (unit?.dimension !== 'current' || isLetterAt(text, at + 1)) return false;
  const letter = text.charAt(at);
  return letter === 'L' || letter === 'E' || letter === 'T' || (isFuse && letter === 'H');
}
