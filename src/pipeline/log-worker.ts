import { enableCompileCache } from 'node:module';
import { parentPort } from 'node:worker_threads';
import type { Batch, BatchAnswer } from './in-workers.ts';
import type { LogJob } from './read-many-logs.ts';
import type { LogReading } from './read-log.ts';

enableCompileCache();
const { readOrSayWhy } = await import('./read-many-logs.ts');

parentPort?.on('message', ({ first, jobs }: Batch<LogJob>) => {
  void Promise.all(jobs.map(readOrSayWhy)).then((results) => {
    parentPort?.postMessage({ first, results } satisfies BatchAnswer<LogReading>);
  });
});
