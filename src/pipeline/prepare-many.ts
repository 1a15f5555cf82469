import { availableParallelism } from 'node:os';
import type { ResourceLimits } from 'node:worker_threads';
import { factsByNumber, type PartFacts } from '../corpus/part-facts/part-facts.ts';
import type { Bench } from '../entry/bench.ts';
import type { SiteDerating } from '../standards/derating/policy.ts';
import type { EntryRecord } from './entry-record.ts';
import { inWorkers } from './in-workers.ts';
import type { EntrySteps } from './entry-steps.ts';
import { writeDeviceFiles } from './write-device-files.ts';
import type { EntryLog } from './logs-of-entries.ts';
import type { EntryPhoto } from './photos/photos-of-entries.ts';
import type { EntrySurroundings } from './entry-surroundings.ts';
import { prepareEntry } from './prepare-entry.ts';
import { programPart } from './program-part.ts';
import { readText } from './read-text.ts';
import type { EntryFile } from './scan-content.ts';
import { writeSheet } from './sheet-file.ts';

/** One file to prepare. */
export interface EntryJob {
  readonly source: EntryFile;
  /** Logs that the entry names, read. */
  readonly logs?: readonly EntryLog[];
  /** Photos that the entry names, looked at. */
  readonly photos?: readonly EntryPhoto[];
}

// Starting a worker costs as much as some twenty entries; below twice that, one thread is sooner done.
const WORTH_WORKERS = 40;
/**
 * One entry needs some 20 MB at most; without a limit each thread lets its garbage grow to several hundred. Room for young values saves a
 * tenth to a fifth of the time; a build, which has most to hold, does with less of it.
 */
function memoryOf({ forPages }: WorkerStart): ResourceLimits {
  return { maxOldGenerationSizeMb: 256, maxYoungGenerationSizeMb: forPages ? 24 : 96 };
}

/** Prepares files, writes their sheets, and returns their records in the order of the jobs. */
export async function prepareMany(
  jobs: readonly EntryJob[],
  start: WorkerStart,
  steps: EntrySteps | null,
  onDone: (count: number) => void,
): Promise<EntryRecord[]> {
  const workers = steps === null && jobs.length > WORTH_WORKERS ? Math.min(availableParallelism(), 4) : 1;
  if (workers < 2) return inProcess(jobs, start, steps, onDone);
  const script = programPart('entry-worker');
  return inWorkers(jobs, { script, start, count: workers, memory: memoryOf(start), batch: 8, ahead: 2 }, onDone);
}

async function inProcess(
  jobs: readonly EntryJob[],
  { prepared, facts, derating, bench, forPages }: WorkerStart,
  given: EntrySteps | null,
  onDone: (count: number) => void,
): Promise<EntryRecord[]> {
  if (jobs.length === 0) return [];
  const steps = given ?? (await import('./own-steps.ts')).OWN_STEPS;
  const around = { facts: factsByNumber(facts), derating, bench, forPages };
  return jobs.map((job, index) => {
    const record = prepareAndWrite(job, prepared, steps, around);
    onDone(index + 1);
    return record;
  });
}

/**
 * Reads and prepares one file and writes what the pages need of it. A file that changed since it was hashed is read as it is now, and one
 * that is gone as empty; the next run finds another hash and reads it again.
 */
export function prepareAndWrite(
  { source, logs = [], photos = [] }: EntryJob,
  prepared: string,
  steps: EntrySteps,
  around: EntrySurroundings,
): EntryRecord {
  const read = readText(source.path);
  const { record, sheet, pages } = prepareEntry(source, read.ok ? read.text : '', steps, { ...around, logs, photos });
  if (sheet !== null && pages !== null) {
    writeSheet(prepared, record.slug, pages.bytes);
    writeDeviceFiles(prepared, sheet, pages);
  }
  return record;
}

/** What all entries of a run are prepared with. */
export interface WorkerStart {
  readonly prepared: string;
  readonly facts: readonly PartFacts[];
  readonly derating: SiteDerating;
  readonly bench: Bench;
  /** Whether what only the pages need is made too. */
  readonly forPages: boolean;
}
