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
const SHELVES = Array.from({ length: 64 }, (_, shelf) => shelf);

/** Records of the last run by file; none of a shelf that cannot be read or that other code wrote. */
export function readRecords(cache: string, version: string): Map<string, CachedRecord> {
  const read = SHELVES.flatMap((shelf) => readShelf(shelfPath(cache, shelf), version));
  return new Map(read.map((cached) => [cached.record.file, cached]));
}

function shelfPath(cache: string, shelf: number): string {
  return join(cache, 'records', `${shelf.toString(16).padStart(2, '0')}.json`);
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
  for (const shelf of SHELVES) {
    const [was, is] = [before.get(shelf) ?? [], now.get(shelf) ?? []];
    const path = shelfPath(cache, shelf);
    if (is.length === 0) rmSync(path, { force: true });
    else if (is.length !== was.length || is.some((cached) => read.get(cached.record.file) !== cached))
      writeIfChanged(path, JSON.stringify({ version, records: is }));
  }
}

function shelfOf({ record }: CachedRecord): number {
  return createHash('sha256').update(record.file).digest().readUInt8(0) % SHELVES.length;
}
