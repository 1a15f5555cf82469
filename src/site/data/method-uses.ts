import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Value } from '../../values/value.ts';

/** A value on one sheet that a formula computed, as the preparing step lists it in `methods.json`. */
export interface MethodUse {
  readonly slug: string;
  /** What was computed there: "bulk.energy". */
  readonly at: string;
  readonly value: Pick<Value, 'dimension' | 'low' | 'nominal' | 'high' | 'significant'>;
}

/** Uses by formula id, the newest sheet first. */
export type MethodUses = Readonly<Record<string, readonly MethodUse[]>>;

let held: { readonly stamp: string; readonly uses: MethodUses } | null = null;

/** The list of the preparing step; null where it wrote none, and the pages then leave the zone out. */
export function readMethodUses(): MethodUses | null {
  const path = join(process.env['SEAMLINE_PREPARED'] ?? '', 'methods.json');
  if (!existsSync(path)) return null;
  const { mtimeMs, size } = statSync(path);
  const stamp = `${path} ${String(mtimeMs)} ${String(size)}`;
  // Written by our own preparing step a moment ago; its shape is that step's contract.
  if (held?.stamp !== stamp) held = { stamp, uses: JSON.parse(readFileSync(path, 'utf8')) as MethodUses };
  return held.uses;
}
