import { isByDefinition } from './exact.ts';
import type { Value } from './value.ts';

/** One step of how a value was computed. */
export interface TraceStep {
  /** Position in the list; later steps name it in `uses`. */
  readonly index: number;
  readonly value: Value;
  /** Symbol key under which the first user of this value knows it; empty for the final result. */
  readonly key: string;
  /** The steps that a computed value used, by symbol key. Empty for values that were read or assumed. */
  readonly uses: readonly { readonly key: string; readonly step: number }[];
}

/** Whether an assumption stands anywhere in the trace of a value. */
export function restsOnAssumption(value: Value): boolean {
  if (value.origin.evidence === 'assumed') return !isByDefinition(value);
  if (value.origin.evidence !== 'computed') return false;
  return Object.values(value.origin.inputs).some(restsOnAssumption);
}

/** The steps of a value's trace: what a step uses stands before it, the value itself is last, nothing stands twice. */
export function flattenTrace(value: Value): readonly TraceStep[] {
  const steps: TraceStep[] = [];
  const known = new Map<string, number>();
  walk(value, '', steps, known);
  return steps;
}

function walk(value: Value, key: string, steps: TraceStep[], known: Map<string, number>): number {
  const { origin } = value;
  const uses =
    origin.evidence === 'computed'
      ? Object.entries(origin.inputs).map(([name, input]) => ({ key: name, step: walk(input, name, steps, known) }))
      : [];
  const identity = JSON.stringify([value.dimension, value.low, value.nominal, value.high, provenance(value), uses]);
  const before = known.get(identity);
  if (before !== undefined) return before;
  const index = steps.length;
  known.set(identity, index);
  steps.push({ index, value, key, uses });
  return index;
}

/** What makes two steps with equal numbers the same step: the place read, the reason assumed, the formula used. */
function provenance(value: Value): readonly string[] {
  const { origin } = value;
  if (origin.evidence === 'computed') return [origin.evidence, origin.formula];
  if (origin.evidence === 'assumed') return [origin.evidence, origin.reason];
  return [origin.evidence, origin.at, origin.written];
}
