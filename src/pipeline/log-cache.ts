import { mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { LogReading } from './read-log.ts';
import { writeIfChanged } from './write-if-changed.ts';

/** Where readings are kept, and the version of the code that made them. */
export interface KeptLogs {
  readonly cache: string;
  readonly version: string;
}

/** What a log of this key said when it was last read; null where that is not known. */
export function cachedReading(kept: KeptLogs, key: string): LogReading | null {
  try {
    // The folder is named by the code that wrote it, so what it holds has this code's types.
    return JSON.parse(readFileSync(join(folderOf(kept), `${key}.json`), 'utf8')) as LogReading;
  } catch {
    return null;
  }
}

/** Keeps what a log said; what other code kept is dropped. */
export function keepReading(kept: KeptLogs, key: string, reading: LogReading): void {
  const folder = folderOf(kept);
  mkdirSync(folder, { recursive: true });
  for (const name of readdirSync(join(kept.cache, 'logs')))
    if (name !== shortVersion(kept)) rmSync(join(kept.cache, 'logs', name), { recursive: true, force: true });
  writeIfChanged(join(folder, `${key}.json`), JSON.stringify(reading));
}

function folderOf(kept: KeptLogs): string {
  return join(kept.cache, 'logs', shortVersion(kept));
}

function shortVersion({ version }: KeptLogs): string {
  return version.slice(0, 16);
}
