import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { MethodUses } from '../../corpus/method-uses.ts';

let held: { readonly stamp: string; readonly uses: Readonly<Record<string, MethodUses>> } | null = null;

/** The sheets that use a formula, as the preparing step listed them; null where none does. */
export function usesOfMethod(formula: string): MethodUses | null {
  const path = join(process.env['SEAMLINE_PREPARED'] ?? '', 'methods.json');
  if (!existsSync(path)) return null;
  const { mtimeMs, size } = statSync(path);
  const stamp = `${path} ${String(mtimeMs)} ${String(size)}`;
  // Written by our own preparing step a moment ago; its shape is that step's contract.
  if (held?.stamp !== stamp) held = { stamp, uses: JSON.parse(readFileSync(path, 'utf8')) as Readonly<Record<string, MethodUses>> };
  return held.uses[formula] ?? null;
}
