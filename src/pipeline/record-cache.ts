import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { EntryRecord } from './entry-record.ts';
import { writeIfChanged } from './write-if-changed.ts';

/** A record with the key under which it holds: hash of the file's bytes and of the code. */
export interface CachedRecord {
  readonly key: string;
  readonly record: EntryRecord;
}

const INDEX = 'records.json';

/** Records of the last run by file; empty where there are none, or where other code wrote them. */
export function readRecords(cache: string, version: string): Map<string, CachedRecord> {
  try {
    const stored: unknown = JSON.parse(readFileSync(join(cache, INDEX), 'utf8'));
    // Whatever this version of the code wrote has its types; anything else is not looked at.
    if (
      typeof stored === 'object' &&
      stored !== null &&
      'version' in stored &&
      stored.version === version &&
      'records' in stored &&
      Array.isArray(stored.records)
    ) {
      return new Map((stored.records as readonly CachedRecord[]).map((cached) => [cached.record.file, cached]));
    }
  } catch {
    // No index, or half of one: everything is read again.
  }
  return new Map();
}

/** Keeps the records for the next run. */
export function writeRecords(cache: string, version: string, records: readonly CachedRecord[]): void {
  mkdirSync(cache, { recursive: true });
  writeIfChanged(join(cache, INDEX), JSON.stringify({ version, records }));
}
