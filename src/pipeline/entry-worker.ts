import { enableCompileCache } from 'node:module';
import { parentPort, workerData } from 'node:worker_threads';
import type { EntryRecord } from './entry-record.ts';
import type { Batch, BatchAnswer } from './in-workers.ts';
import type { EntryJob, WorkerStart } from './prepare-many.ts';

// A worker compiles for itself; with the cache it reads what the last run compiled. So it is asked for first.
enableCompileCache();
const { OWN_STEPS } = await import('./own-steps.ts');
const { factsByNumber } = await import('../corpus/part-facts/part-facts.ts');
const { prepareAndWrite } = await import('./prepare-many.ts');

// Given by the thread that starts this one.
const { prepared, facts, derating, bench, forPages } = workerData as WorkerStart;
const around = { facts: factsByNumber(facts), derating, bench, forPages };

parentPort?.on('message', ({ first, jobs }: Batch<EntryJob>) => {
  const answer: BatchAnswer<EntryRecord> = { first, results: jobs.map((job) => prepareAndWrite(job, prepared, OWN_STEPS, around)) };
  parentPort?.postMessage(answer);
});
