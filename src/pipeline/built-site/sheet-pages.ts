import { availableParallelism } from 'node:os';
import type { SheetSummary } from '../../corpus/prepared.ts';
import type { SheetBeside } from '../../corpus/sheet-beside.ts';
import type { SizedDevice } from '../../corpus/size-field.ts';
import type { SiteSettings } from '../../corpus/prepared.ts';
import type { FrameKind } from '../../pages/site-page.ts';
import { inWorkers } from '../in-workers.ts';
import { programPart } from '../program-part.ts';
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

/** Starting a worker costs as much as some forty pages. */
const WORTH_WORKERS = 100;
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
  const script = programPart('built-site/sheet-page-worker');
  // Three batches ready, since this thread draws pages of its own meanwhile.
  const plan = { script, start: writing, count: Math.min(availableParallelism(), 4), memory: WORKER_MEMORY, batch: 8, ahead: 3 };
  return inWorkers(jobs, plan, onDone);
}
