import type { EntrySteps } from './entry-steps.ts';

/** What `prepare` is asked for. */
export interface PrepareOptions {
  /** Folder with `teardowns/` and `site.yaml`. */
  readonly content: string;
  /** Folder that the site reads: `manifest.json`, `methods.json`, `across.json` and `sheets/<slug>.sheet`. */
  readonly prepared: string;
  /** Folder for what the next run can use again. */
  readonly cache: string;
  /** `check` and `build` leave drafts and broken entries out of the manifest; `dev` shows both. */
  readonly mode: 'check' | 'build' | 'dev';
  readonly onProgress?: (done: number, total: number) => void;
  /** Called for each photo that was looked at or made. */
  readonly onPhoto?: (done: number, total: number) => void;
  /** Steps to use in place of our own, for tests; nothing is then taken from the cache. */
  readonly steps?: EntrySteps;
}
