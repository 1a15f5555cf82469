import { existsSync, mkdirSync, rmSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { hasErrors } from '../diagnostics/has-errors.ts';
import { checkOutput, type OutputFault } from './check-output.ts';
import { folderBeside, mayReplace, swapFolder } from './folder-swap.ts';
import { isUpToDate, markOutput, siteKey } from './output-state.ts';
import { isMuch, prepareApart, type Preparation } from './prepare-apart.ts';
import { readPhotoList } from './photos/photo-list.ts';
import { pictureFaults, filesThatMayBePictures } from './photos/output-pictures.ts';
import { keepAddresses } from './published-addresses.ts';
import type { BuiltSite, SiteBuilder } from './site-builder.ts';
import { keepOutput, previousOutput } from './built-site/previous-output.ts';
import { siteFrames, type SiteFrames } from './built-site/site-frames.ts';
import { readPolicies } from './read-policies.ts';
import { readSettings } from './read-settings.ts';

/** What `buildSite` is asked for. */
export interface BuildOptions {
  readonly content: string;
  /** Folder that is published; replaced as a whole, or left byte for byte as it was. */
  readonly out: string;
  /** Base path with slashes at both ends. */
  readonly base: string;
  readonly prepared: string;
  readonly cache: string;
  readonly onProgress?: (what: 'entries' | 'photos' | 'pages' | 'links', done: number, total: number) => void;
  /** Leave the published folder alone where it holds already, untouched, what this build would write. */
  readonly keepUnchanged?: boolean;
  /** For tests: what writes the pages. */
  readonly builder?: SiteBuilder;
}

/** How a build ended. Only `published` has touched the output folder. */
export type BuildOutcome =
  | { readonly ended: 'published'; readonly prepared: Preparation; readonly unchanged: boolean }
  | { readonly ended: 'errors in content'; readonly prepared: Preparation }
  | { readonly ended: 'output refused'; readonly reason: string }
  | { readonly ended: 'pages failed'; readonly prepared: Preparation; readonly reason: string }
  | { readonly ended: 'faults in output'; readonly prepared: Preparation; readonly faults: readonly OutputFault[] };

/** Checks the content, builds the pages beside the published folder, checks them, and only then swaps them in. */
export async function buildSite(options: BuildOptions): Promise<BuildOutcome> {
  const out = resolve(options.out);
  if (!mayReplace(out)) {
    return {
      ended: 'output refused',
      reason: `${out} holds files that this program did not write; give an empty or a new folder with --out`,
    };
  }
  const giveUp = new AbortController();
  const frames = options.builder === undefined ? beginFrames(options, giveUp.signal) : undefined;
  // Side by side the generator and the readers of a thousand entries would need their memory at one time.
  if (isMuch(options.content)) await frames?.catch(() => undefined);
  const prepared = await prepareApart({
    content: options.content,
    prepared: options.prepared,
    cache: options.cache,
    mode: 'build',
    onProgress: (done, total) => options.onProgress?.('entries', done, total),
    onPhoto: (done, total) => options.onProgress?.('photos', done, total),
  });
  if (hasErrors(prepared.diagnostics)) {
    giveUp.abort();
    return { ended: 'errors in content', prepared };
  }
  const key = siteKey({ prepared: options.prepared, base: options.base, address: prepared.site.address });
  if (options.keepUnchanged === true && isUpToDate(out, key)) return { ended: 'published', prepared, unchanged: true };
  mkdirSync(dirname(out), { recursive: true });
  const fresh = folderBeside(out);
  try {
    return await buildInto({ fresh, out, key, frames }, prepared, options);
  } finally {
    rmSync(fresh, { recursive: true, force: true });
  }
}

/** Starts on what does not follow from the entries while they are being read. */
function beginFrames(options: BuildOptions, signal: AbortSignal): Promise<SiteFrames> {
  const { settings: site } = readSettings(resolve(options.content), readPolicies(resolve(options.content)).policies);
  const frames = siteFrames({ prepared: resolve(options.prepared), cache: resolve(options.cache), base: options.base, site, signal });
  // A fault is told where the frames are needed; until then nobody listens.
  frames.catch(() => undefined);
  return frames;
}

interface BuildPlace {
  /** Empty folder to build into. */
  readonly fresh: string;
  readonly out: string;
  readonly key: string;
  readonly frames: Promise<SiteFrames> | undefined;
}

async function buildInto({ fresh, out, key, frames }: BuildPlace, prepared: Preparation, options: BuildOptions): Promise<BuildOutcome> {
  const { slugs } = prepared;
  const cache = resolve(options.cache);
  options.onProgress?.('pages', 0, slugs.length);
  const previous = previousOutput(cache, out);
  let built: BuiltSite;
  try {
    // The drawing of pages is not loaded before it is needed: until then the memory is the entries'.
    const build = options.builder ?? (await import('./site-builder.ts')).buildFromFrames;
    built = await build({
      ...{ prepared: resolve(options.prepared), folder: fresh, base: options.base, cache, preparation: prepared, previous },
      ...(frames === undefined ? {} : { frames }),
      onPage: (done, total) => options.onProgress?.('pages', done, total),
    });
  } catch (error) {
    return { ended: 'pages failed', prepared, reason: error instanceof Error ? error.message : String(error) };
  }
  options.onProgress?.('links', 0, slugs.length);
  const faults = faultsOf(fresh, built, prepared, options);
  if (faults.length > 0) return { ended: 'faults in output', prepared, faults };
  const state = markOutput(fresh, key);
  const removed = swapFolder(fresh, out);
  keepOutput(cache, out, state, built);
  keepAddresses(resolve(options.content), slugs);
  await removed;
  return { ended: 'published', prepared, unchanged: false };
}

function faultsOf(fresh: string, built: BuiltSite, { slugs }: Preparation, options: BuildOptions): readonly OutputFault[] {
  const { originals } = readPhotoList(options.prepared);
  const faults = [
    ...checkOutput(fresh, options.base, slugs, built.facts),
    ...pictureFaults(fresh, filesThatMayBePictures(fresh), originals),
  ];
  if (!existsSync(join(fresh, 'index.html'))) faults.push({ page: 'index.html', message: 'The site has no home page' });
  return faults;
}
