import { statSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import type { LogFile } from '../entry/entry.ts';
import { inWorkers } from './in-workers.ts';
import { pipelineFinding } from './pipeline-rule.ts';
import { programPart } from './program-part.ts';
import { readLog, type LogReading } from './read-log.ts';
import { errorCode } from './read-text.ts';

/** A log to read, and where it lies. */
export interface LogJob {
  readonly path: string;
  readonly log: LogFile;
}

/** A worker costs as much as reading so many bytes. */
const WORTH_WORKERS = 4_000_000;

/** Reads logs, several at a time where they are long. In the order of the jobs; a file that cannot be read becomes a finding. */
export async function readManyLogs(jobs: readonly LogJob[]): Promise<readonly LogReading[]> {
  const isLong = jobs.length > 1 && jobs.reduce((sum, { path }) => sum + sizeOf(path), 0) > WORTH_WORKERS;
  if (isLong) {
    const count = Math.min(jobs.length, availableParallelism(), 4);
    return inWorkers(jobs, { script: programPart('log-worker'), count, batch: 1, ahead: 1 });
  }
  const readings: LogReading[] = [];
  for (const job of jobs) readings.push(await readOrSayWhy(job));
  return readings;
}

/** Reads one log. A fault of the disk or of this program is a finding, and the other logs are read. */
export async function readOrSayWhy({ path, log }: LogJob): Promise<LogReading> {
  try {
    return await readLog(path, log);
  } catch (error) {
    const finding = pipelineFinding('file-unreadable', `The log could not be read (${errorCode(error)})`, {
      in: 'file',
      line: 1,
      column: 1,
    });
    return { id: log.id, file: log.file, summary: null, inEntry: [], inFile: [finding] };
  }
}

function sizeOf(path: string): number {
  return statSync(path, { throwIfNoEntry: false })?.size ?? 0;
}
