import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { SheetSummary } from '../../corpus/prepared.ts';
import type { SheetBeside } from '../../corpus/sheet-beside.ts';
import type { SizedDevice } from '../../corpus/size-field.ts';
import type { SiteSettings } from '../../corpus/prepared.ts';
import type { FrameKind } from '../../pages/site-page.ts';
import type { PageFacts } from './page-facts.ts';

/** A sheet whose page is to be written. */
export interface SheetJob {
  readonly summary: SheetSummary;
  readonly beside: SheetBeside;
  /** File of the page. */
  readonly to: string;
}

/** What all pages of sheets are written with. */
export interface SheetWriting {
  readonly prepared: string;
  readonly site: SiteSettings;
  readonly base: string;
  readonly frames: Readonly<Record<FrameKind, string>>;
  readonly devices: readonly SizedDevice[];
}

/** What comes back of a batch: facts of each page, in its order. */
export interface SheetAnswer {
  readonly first: number;
  readonly facts: readonly PageFacts[];
}

/** What goes to a worker. */
export interface SheetOrder {
  readonly first: number;
  readonly jobs: readonly SheetJob[];
}

/** Starting a worker costs as much as some forty pages. */
const WORTH_WORKERS = 100;
const BATCH = 8;
const WORKER_MEMORY = { maxOldGenerationSizeMb: 192, maxYoungGenerationSizeMb: 16 };

/** Writes the pages of sheets and returns what the check of links needs of each, in the order of the jobs. */
export async function writeSheetPages(
  jobs: readonly SheetJob[],
  writing: SheetWriting,
  onDone: (count: number) => void,
): Promise<readonly PageFacts[]> {
  if (jobs.length === 0) return [];
  if (jobs.length < WORTH_WORKERS) {
    const { sheetPageWriter } = await import('./sheet-page-writer.ts');
    const write = sheetPageWriter(writing);
    return jobs.map((job, index) => {
      const facts = write(job);
      onDone(index + 1);
      return facts;
    });
  }
  return inWorkers(jobs, writing, onDone);
}

function inWorkers(jobs: readonly SheetJob[], writing: SheetWriting, onDone: (count: number) => void): Promise<readonly PageFacts[]> {
  const all: PageFacts[] = [];
  let next = 0;
  let done = 0;
  const threads = Array.from(
    { length: Math.min(availableParallelism(), 4) },
    () => new Worker(new URL('./sheet-page-worker.ts', import.meta.url), { workerData: writing, resourceLimits: WORKER_MEMORY }),
  );
  const feed = (worker: Worker): void => {
    const order: SheetOrder = { first: next, jobs: jobs.slice(next, next + BATCH) };
    next += order.jobs.length;
    if (order.jobs.length > 0) worker.postMessage(order);
  };
  const working = new Promise<readonly PageFacts[]>((resolve, reject) => {
    for (const worker of threads) {
      worker.on('error', reject);
      worker.on('exit', (code) => {
        if (done < jobs.length) reject(new Error(`A worker ended early (exit code ${String(code)})`));
      });
      worker.on('message', ({ first, facts }: SheetAnswer) => {
        facts.forEach((each, index) => (all[first + index] = each));
        done += facts.length;
        onDone(done);
        if (done === jobs.length) resolve(all);
        else feed(worker);
      });
      // Three batches each, so that no worker waits while this thread draws pages of its own.
      for (let ahead = 0; ahead < 3; ahead += 1) feed(worker);
    }
  });
  return working.finally(() => Promise.all(threads.map((worker) => worker.terminate())));
}
