import { createHash } from 'node:crypto';
import { factsByNumber, factsKey, type PartFactsByNumber } from '../corpus/part-facts/part-facts.ts';
import type { Bench } from '../entry/bench.ts';
import type { SiteDerating } from '../standards/derating/policy.ts';
import { codeVersion } from './code-version.ts';
import type { EntryRecord } from './entry-record.ts';
import { logsOfEntries } from './logs-of-entries.ts';
import type { FileFinding } from './pipeline-rule.ts';
import { hasDeviceFiles } from './device-files.ts';
import { prepareMany, type EntryJob, type WorkerStart } from './prepare-many.ts';
import { hashBeside } from './read-beside.ts';
import { readText } from './read-text.ts';
import { readRecords, writeRecords, type CachedRecord } from './record-cache.ts';
import type { EntryFile } from './scan-content.ts';
import { hasSheet } from './sheet-file.ts';
import { byText } from './text-order.ts';
import { hasPhoto } from './photos/photo-store.ts';
import { photoStamps, type PhotoStamps } from './photos/photo-stamps.ts';
import { photosOfEntries } from './photos/photos-of-entries.ts';
import type { PrepareOptions } from './prepare-options.ts';

type Surroundings = Pick<WorkerStart, 'facts' | 'derating' | 'bench'>;

/** An entry that is to be prepared, with the key under which its record will hold. */
interface KeyedJob extends EntryJob {
  readonly key: string;
}

/** The entries by what is to be done with them. */
interface SortedEntries {
  readonly unread: readonly FileFinding[];
  readonly kept: readonly CachedRecord[];
  readonly jobs: readonly KeyedJob[];
}

/** Entries as they are now: records of the last run that still hold, and the others read anew. */
export async function readEntries(
  entries: readonly EntryFile[],
  around: Surroundings,
  options: PrepareOptions,
): Promise<{ readonly records: EntryRecord[]; readonly unread: readonly FileFinding[]; readonly parsed: number }> {
  const version = codeVersion();
  const known = options.steps === undefined ? readRecords(options.cache, version) : new Map<string, CachedRecord>();
  const { unread, kept, jobs } = await sortedEntries(entries, known, around, options);
  const fresh = await prepareMany(
    jobs,
    { prepared: options.prepared, ...around, forPages: options.mode !== 'check' },
    options.steps ?? null,
    (done) => options.onProgress?.(done, jobs.length),
  );
  const keys = new Map(jobs.map(({ source, key }) => [source.file, key]));
  const read = fresh.flatMap((record): CachedRecord[] => {
    const key = keys.get(record.file);
    return key === undefined ? [] : [{ key, record }];
  });
  const all = [...kept, ...read].sort((one, other) => byText(one.record.file, other.record.file));
  if (options.steps === undefined && (jobs.length > 0 || known.size !== all.length))
    writeRecords(options.cache, version, { records: all, read: known });
  return { records: all.map(({ record }) => record), unread, parsed: jobs.length };
}

/** Sorts entries by the hash of their bytes. Their texts end here: a thousand of them need more memory than all that is kept of them. */
async function sortedEntries(
  entries: readonly EntryFile[],
  known: ReadonlyMap<string, CachedRecord>,
  { facts, derating, bench }: Surroundings,
  options: PrepareOptions,
): Promise<SortedEntries> {
  const byNumber = factsByNumber(facts);
  const judgedBy = `${deratingKey(derating)}${benchKey(bench)}`;
  const stamps = photoStamps(options.cache);
  const folders = options.mode === 'check' ? null : options;
  const unread: FileFinding[] = [];
  const kept: CachedRecord[] = [];
  const changed: { readonly source: EntryFile; readonly text: string; readonly key: string }[] = [];
  for (const source of entries) {
    const read = readText(source.path);
    if (!read.ok) {
      unread.push({ file: source.file, finding: read.finding });
      continue;
    }
    const cached = known.get(source.file);
    const key = `${read.hash}${judgedBy}`;
    if (cached?.key === key && stillHolds(cached.record, source, { facts: byNumber, stamps, folders })) kept.push(cached);
    else changed.push({ source, text: read.text, key });
  }
  const logs = await logsOfEntries(changed, options.steps === undefined ? { cache: options.cache, version: codeVersion() } : null);
  const photos = await photosOfEntries(changed, {
    ...{ cache: options.cache, stamps, encode: folders !== null },
    onDone: options.onPhoto ?? (() => undefined),
  });
  stamps.keep();
  const jobs = changed.map(({ source, key }) => ({
    ...{ source, key },
    ...{ logs: logs.get(source.file) ?? [], photos: photos.get(source.file) ?? [] },
  }));
  return { unread, kept, jobs };
}

/** What the site says of derating as part of a key: every verdict depends on it. Empty where it says nothing. */
function deratingKey(derating: SiteDerating): string {
  if (derating.chosen === null && derating.own.length === 0) return '';
  return `-${createHash('sha256').update(JSON.stringify(derating)).digest('hex').slice(0, 16)}`;
}

/**
 * The bench as part of a key: the interval of every reading depends on its instruments, and what a value leads to on the names of its
 * methods; how they are done stands on the bench page alone. Empty where there is none.
 */
function benchKey({ instruments, methods }: Bench): string {
  if (instruments.length === 0 && methods.length === 0) return '';
  const named = methods.map(({ id, name, of }) => [id, name, of]);
  return `-${createHash('sha256')
    .update(JSON.stringify([instruments, named]))
    .digest('hex')
    .slice(0, 16)}`;
}

/** Whether a record is that of the entry as it is now; with what the pages need of it in `prepared`, where they are asked for. */
function stillHolds(
  record: EntryRecord,
  source: EntryFile,
  { facts, stamps, folders }: { readonly facts: PartFactsByNumber; readonly stamps: PhotoStamps; readonly folders: PrepareOptions | null },
): boolean {
  const numbers = record.stated.parts.map((part) => part.number);
  return (
    factsKey(numbers, facts) === record.factsKey &&
    (folders === null || hasPageWork(record, folders)) &&
    // What was not found is looked for again: the finding says what lies there instead.
    record.dependsOn.every(({ name, hash }) => hash !== null && hashBeside(source.path, name, stamps.hashOf) === hash)
  );
}

function hasPageWork(record: EntryRecord, { prepared, cache }: PrepareOptions): boolean {
  return (
    record.forPages &&
    hasSheet(prepared, record.slug, record.sheetBytes) &&
    (record.sheetBytes === null || hasDeviceFiles(prepared, record.slug)) &&
    record.photos.every(({ published }) => hasPhoto(cache, published))
  );
}
