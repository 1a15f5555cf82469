import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { AcrossFacts } from '../corpus/across-facts.ts';
import type { MethodUses } from '../corpus/method-uses.ts';
import type { Manifest } from '../corpus/prepared.ts';
import type { PreparedCorpus } from '../pages/site-corpus.ts';

/** What the preparing step wrote over all entries. Throws where it has not run. */
export function readPreparedCorpus(prepared: string): PreparedCorpus {
  // Written by this program a moment ago; their shape is that step's contract.
  const read = (name: string): unknown => JSON.parse(readFileSync(join(prepared, name), 'utf8'));
  return {
    manifest: read('manifest.json') as Manifest,
    across: read('across.json') as Readonly<Record<string, AcrossFacts>>,
    uses: read('methods.json') as Readonly<Record<string, MethodUses>>,
  };
}

/** Changes whenever the preparing step has written something new over all entries. */
export function stampOfPrepared(prepared: string): string {
  return ['manifest.json', 'across.json', 'methods.json']
    .map((name) => {
      const { mtimeMs, size } = statSync(join(prepared, name));
      return `${String(mtimeMs)} ${String(size)}`;
    })
    .join(' ');
}
