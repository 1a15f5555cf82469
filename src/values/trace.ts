import { isByDefinition } from './exact.ts';
import type { Value } from './value.ts';

/** Whether an assumption stands anywhere in the trace of a value. */
export function restsOnAssumption(value: Value): boolean {
  if (value.origin.evidence === 'assumed') return !isByDefinition(value);
  if (value.origin.evidence !== 'computed') return false;
  return Object.values(value.origin.inputs).some(restsOnAssumption);
}
