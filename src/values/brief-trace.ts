import { isMissing, type Known, type Value } from './value.ts';
import type { Dimension } from '../units/dimension.ts';

/**
 * The same value with a short trace: of what it was computed from only what was read or assumed, each once. For a value that very
 * many others use and whose own working stands elsewhere, so that the traces of those others stay small. What rests on an
 * assumption still says so.
 */
export function briefTrace<D extends Dimension>(known: Known<D>): Known<D> {
  if (isMissing(known) || known.origin.evidence !== 'computed') return known;
  const leaves = new Map<string, Value>();
  collect(known, leaves, '');
  return { ...known, origin: { ...known.origin, inputs: Object.fromEntries(leaves) } };
}

/** Most leaves that are kept; a bank of many capacitors is one kind of leaf. */
const MOST_LEAVES = 12;

function collect(value: Value, leaves: Map<string, Value>, key: string): void {
  if (leaves.size >= MOST_LEAVES) return;
  if (value.origin.evidence === 'computed') {
    for (const [name, input] of Object.entries(value.origin.inputs)) collect(input, leaves, name);
    return;
  }
  const same = [...leaves.values()].some((leaf) => leaf.nominal === value.nominal && leaf.dimension === value.dimension);
  if (!same) leaves.set(leaves.has(key) ? `${key} ${leaves.size + 1}` : key, value);
}
