import type { PartFactsByNumber } from '../corpus/part-facts/part-facts.ts';
import type { Bench } from '../entry/bench.ts';
import type { SiteDerating } from '../standards/derating/policy.ts';
import type { EntryLog } from './logs-of-entries.ts';
import type { EntryPhoto } from './photos/photos-of-entries.ts';

/** What one entry is prepared with. */
export interface EntrySurroundings {
  readonly facts: PartFactsByNumber;
  /** Whether what only the pages need is made too; `check` does without. */
  readonly forPages: boolean;
  /** What the site says of derating. */
  readonly derating?: SiteDerating;
  /** Instruments of the bench; none where the site has no bench file. */
  readonly bench?: Bench;
  /** The logs that it names, read. */
  readonly logs?: readonly EntryLog[];
  /** The photos that it names, looked at. */
  readonly photos?: readonly EntryPhoto[];
}
