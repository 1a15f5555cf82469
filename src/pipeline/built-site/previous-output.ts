import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { deserialize, serialize } from 'node:v8';
import { markedState, untouchedSince } from '../output-state.ts';
import type { PageFacts } from './page-facts.ts';

/** What the last build of an output folder wrote. */
export interface PreviousOutput {
  readonly folder: string;
  /** By path from the root of the site: what the file followed from. */
  readonly keys: ReadonlyMap<string, string>;
  readonly facts: ReadonlyMap<string, PageFacts>;
}

/** State of the folder that the record belongs to, and the record. */
interface KeptRecord extends Omit<PreviousOutput, 'folder'> {
  readonly state: string;
}

function recordPath(cache: string, out: string): string {
  return join(cache, 'outputs', createHash('sha256').update(resolve(out)).digest('hex').slice(0, 24));
}

/** The last build of the folder; null where there is none, or where anybody has touched the folder since. */
export function previousOutput(cache: string, out: string): PreviousOutput | null {
  const path = recordPath(cache, out);
  if (!existsSync(path) || !existsSync(out)) return null;
  try {
    // Written by this program; one that another version wrote names keys that no file of this version has.
    const { state, keys, facts } = deserialize(readFileSync(path)) as KeptRecord;
    return markedState(out) === state && untouchedSince(out, state) ? { folder: out, keys, facts } : null;
  } catch {
    // A record that cannot be read is no record: everything is written anew.
    return null;
  }
}

/** Remembers what was written, for the next build of the same folder. */
export function keepOutput(cache: string, out: string, state: string, { keys, facts }: Omit<PreviousOutput, 'folder'>): void {
  const path = recordPath(cache, out);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, serialize({ state, keys, facts } satisfies KeptRecord));
}
