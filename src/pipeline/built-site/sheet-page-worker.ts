import { enableCompileCache } from 'node:module';
import { parentPort, workerData } from 'node:worker_threads';
import type { Batch, BatchAnswer } from '../in-workers.ts';
import type { PageFacts } from './page-facts.ts';
import type { SheetJob, SheetWriting } from './sheet-pages.ts';

// A worker compiles for itself; with the cache it reads what the last run compiled. So it is asked for first.
enableCompileCache();
const { sheetPageWriter } = await import('./sheet-page-writer.ts');

// Given by the thread that starts this one.
const write = sheetPageWriter(workerData as SheetWriting);

parentPort?.on('message', ({ first, jobs }: Batch<SheetJob>) => {
  const answer: BatchAnswer<PageFacts> = { first, results: jobs.map((job) => write(job)) };
  parentPort?.postMessage(answer);
});
