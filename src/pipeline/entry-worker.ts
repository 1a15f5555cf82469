import { parentPort, workerData } from 'node:worker_threads';
import { OWN_STEPS } from './own-steps.ts';
import { prepareAndWrite, type WorkerAnswer, type WorkerOrder } from './prepare-many.ts';

// Given by the thread that starts this one.
const { prepared } = workerData as { readonly prepared: string };

parentPort?.on('message', ({ first, jobs }: WorkerOrder) => {
  const answer: WorkerAnswer = { first, records: jobs.map((job) => prepareAndWrite(job, prepared, OWN_STEPS)) };
  parentPort?.postMessage(answer);
});
