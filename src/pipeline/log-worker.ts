import { enableCompileCache } from 'node:module';
import { parentPort } from 'node:worker_threads';
import type { LogAnswer, LogOrder } from './read-many-logs.ts';

enableCompileCache();
const { readOrSayWhy } = await import('./read-many-logs.ts');

parentPort?.on('message', ({ index, job }: LogOrder) => {
  void readOrSayWhy(job).then((reading) => {
    parentPort?.postMessage({ index, reading } satisfies LogAnswer);
  });
});
