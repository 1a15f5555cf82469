import { createHash } from 'node:crypto';
import type { LogFile } from '../entry/entry.ts';
import { parseFrontmatter } from '../entry/parse-frontmatter.ts';
import { readLogs } from '../entry/read-logs.ts';
import { LOGS_SCHEMA } from '../entry/schema-logs.ts';
import { logFinding } from './log-findings.ts';
import { cachedReading, keepReading } from './log-cache.ts';
import { mayState } from './may-state.ts';
import { notBeside } from './not-beside.ts';
import { hashBeside, pathBeside } from './read-beside.ts';
import type { LogReading } from './read-log.ts';
import { readManyLogs, type LogJob } from './read-many-logs.ts';
import type { EntryFile } from './scan-content.ts';

/** A log of an entry: what it says, and what its result depends on. */
export interface EntryLog extends LogReading {
  /** Hash of the file's bytes; null where it is not there. */
  readonly hash: string | null;
}

interface WantedLog {
  readonly log: LogFile;
  readonly source: EntryFile;
  readonly path: string | null;
  readonly hash: string | null;
}

/** Reads the logs that these entries name, those of a file and mapping that were read before out of the cache. By the file of the entry. */
export async function logsOfEntries(
  jobs: readonly { readonly source: EntryFile; readonly text: string }[],
  /** Null keeps nothing. */
  kept: { readonly cache: string; readonly version: string } | null,
): Promise<ReadonlyMap<string, readonly EntryLog[]>> {
  const wanted = jobs.flatMap(({ source, text }) => logsNamedIn(text).map((log) => wantedLog(log, source)));
  const known = new Map(wanted.map((each) => [each, kept === null ? null : cachedReading(kept, keyOf(each))] as const));
  const missing = wanted.filter((each) => known.get(each) === null && each.path !== null);
  const fresh = await readManyLogs(missing.flatMap(({ path, log }): LogJob[] => (path === null ? [] : [{ path, log }])));
  missing.forEach((each, index) => {
    const reading = fresh[index];
    if (reading === undefined) return;
    known.set(each, reading);
    if (kept !== null) keepReading(kept, keyOf(each), reading);
  });
  const read = wanted.map((each): { readonly file: string; readonly log: EntryLog } => {
    const reading = known.get(each) ?? notThere(each);
    return { file: each.source.file, log: { ...reading, hash: each.hash } };
  });
  return new Map([...Map.groupBy(read, ({ file }) => file)].map(([file, group]) => [file, group.map(({ log }) => log)]));
}

/** The logs of an entry's frontmatter; none where it has none, or where their form is wrong, which the entry's reader says. */
function logsNamedIn(text: string): readonly LogFile[] {
  if (!mayState(text, 'logs')) return [];
  const { data } = parseFrontmatter(text);
  const stated: unknown = typeof data === 'object' && data !== null && 'logs' in data ? data.logs : undefined;
  const shaped = LOGS_SCHEMA.safeParse(stated);
  return shaped.success ? readLogs(shaped.data) : [];
}

function wantedLog(log: LogFile, source: EntryFile): WantedLog {
  return { log, source, path: pathBeside(source.path, log.file), hash: hashBeside(source.path, log.file) };
}

function keyOf({ log, hash }: WantedLog): string {
  return createHash('sha256')
    .update(JSON.stringify([hash, log]))
    .digest('hex');
}

const LOGS = { word: 'log', names: /\.(?:csv|tsv|txt|log)$/i };

function notThere({ log, source }: WantedLog): LogReading {
  const message = notBeside(source.path, log.file, LOGS);
  const finding = logFinding({ rule: 'log-file-missing', message }, { in: 'data', path: log.path, part: 'value' });
  return { id: log.id, file: log.file, summary: null, inEntry: [finding], inFile: [] };
}
