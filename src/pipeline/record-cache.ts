import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { EntryRecord } from './entry-record.ts';
import { writeIfChanged } from './write-if-changed.ts';

/** A record with the key under which it holds: hash of the file's bytes and of the code. */
export interface CachedRecord {
  readonly key: string;
  readonly record: EntryRecord;
}

// One changed entry among a thousand writes a sixty-fourth of what is kept, and not all of it.
const SHELVES = Array.from({ length: 64 }, (_, shelf) => `${shelf.toString(16).padStart(2, '0')}.json`);

/** Records of the last run by file; none of a shelf that cannot be read or that other code wrote. */
export function readRecords(cache: string, version: string): Map<string, CachedRecord> {
  const read = SHELVES.flatMap((name) => readShelf(join(cache, 'records', name), version));
  return new Map(read.map((cached) => [cached.record.file, cached]));
}

function readShelf(path: string, version: string): readonly CachedRecord[] {
  try {
    const stored: unknown = JSON.parse(readFileSync(path, 'utf8'));
    if (typeof stored !== 'object' || stored === null || !('version' in stored) || stored.version !== version) return [];
    // Whatever this version of the code wrote has its types.
    return 'records' in stored && Array.isArray(stored.records) ? (stored.records as readonly CachedRecord[]) : [];
  } catch {
    // No shelf, or half of one: its entries are read again.
    return [];
  }
}

/** Keeps the records for the next run; only the shelves are written whose records are not those that were read. */
export function writeRecords(
  cache: string,
  version: string,
  { records, read }: { readonly records: readonly CachedRecord[]; readonly read: ReadonlyMap<string, CachedRecord> },
): void {
  mkdirSync(join(cache, 'records'), { recursive: true });
  const before = Map.groupBy(read.values(), shelfOf);
  const now = Map.groupBy(records, shelfOf);
  for (const name of SHELVES) {
    const [was, is] = [before.get(name) ?? [], now.get(name) ?? []];
    const path = join(cache, 'records', name);
    if (is.length === 0) rmSync(path, { force: true });
    else if (is.length !== was.length || is.some((cached) => read.get(cached.record.file) !== cached))
      writeIfChanged(path, JSON.stringify({ version, records: is }));
  }
}

function shelfOf({ record }: CachedRecord): string {
  const first = createHash('sha256').update(record.file).digest()[0] ?? 0;
  return SHELVES[first % SHELVES.length] ?? '';
}
