import { Worker, type ResourceLimits } from 'node:worker_threads';

/** Jobs of a list that go to a thread together, from the place of the first. */
export interface Batch<Job> {
  readonly first: number;
  readonly jobs: readonly Job[];
}

/** What a thread made of a batch, in its order. */
export interface BatchAnswer<Result> {
  readonly first: number;
  readonly results: readonly Result[];
}

/** Threads for a list of jobs. */
export interface WorkerPlan {
  /** Program of the threads: it is given `start`, takes batches and answers each. */
  readonly script: URL;
  /** Plain data that every thread starts with. */
  readonly start?: unknown;
  readonly count: number;
  /** Left out, as the runtime gives. */
  readonly memory?: ResourceLimits;
  /** Jobs that go out together: one where each is long, several where asking costs more than the job. */
  readonly batch: number;
  /** Batches that lie ready for each thread, so that none waits for its next one. */
  readonly ahead: number;
}

/** Hands jobs out to threads and returns the results in the order of the jobs. Rejects where a thread fails or ends early. */
export function inWorkers<Result>(
  jobs: readonly unknown[],
  plan: WorkerPlan,
  onDone: (count: number) => void = () => undefined,
): Promise<Result[]> {
  const all: Result[] = [];
  let next = 0;
  let done = 0;
  const threads = Array.from(
    { length: plan.count },
    () => new Worker(plan.script, { workerData: plan.start, ...(plan.memory === undefined ? {} : { resourceLimits: plan.memory }) }),
  );
  const feed = (worker: Worker): void => {
    const batch: Batch<unknown> = { first: next, jobs: jobs.slice(next, next + plan.batch) };
    next += batch.jobs.length;
    if (batch.jobs.length > 0) worker.postMessage(batch);
  };
  const working = new Promise<Result[]>((resolve, reject) => {
    for (const worker of threads) {
      worker.on('error', reject);
      worker.on('exit', (code) => {
        if (done < jobs.length) reject(new Error(`A worker ended early (exit code ${String(code)})`));
      });
      worker.on('message', ({ first, results }: BatchAnswer<Result>) => {
        results.forEach((result, index) => (all[first + index] = result));
        done += results.length;
        onDone(done);
        if (done === jobs.length) resolve(all);
        else feed(worker);
      });
      for (let ready = 0; ready < plan.ahead; ready += 1) feed(worker);
    }
  });
  return working.finally(() => Promise.all(threads.map((worker) => worker.terminate())));
}
