import { fork } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { formerAddressPages } from '../corpus/former-address-pages.ts';
import type { SiteSettings } from '../corpus/prepared.ts';
import type { Diagnostic } from '../diagnostics/finding.ts';
import type { PrepareOptions } from './prepare-options.ts';
import type { Prepared } from './prepare.ts';
import { programPart } from './program-part.ts';
import { listFolder } from './list-folder.ts';

/** What a build needs to know of the prepared content; the rest lies in the prepared folder. */
export interface Preparation {
  readonly diagnostics: readonly Diagnostic[];
  readonly site: SiteSettings;
  /** Sheets that are listed, newest first. */
  readonly slugs: readonly string[];
  /** Addresses that sheets had before, with the sheet that stands there now: old name, slug. */
  readonly former: readonly (readonly [string, string])[];
}

/** What the process that prepares is asked and what it says. */
export type ApartOrder = Omit<PrepareOptions, 'onProgress' | 'onPhoto' | 'steps'>;
export type ApartMessage =
  | { readonly says: 'progress'; readonly of: 'entries' | 'photos'; readonly done: number; readonly total: number }
  | { readonly says: 'done'; readonly preparation: Preparation }
  | { readonly says: 'failed'; readonly reason: string };

/** Below this, starting a process costs more than the memory is worth. */
const WORTH_PROCESS = 200;

/** Whether a content folder holds so many entries that they are read in a process of their own. */
export function isMuch(content: string): boolean {
  // Their folders are counted and not looked into: what is wrong with one is found where they are read.
  return listFolder(join(content, 'teardowns'), 'teardowns', []).length >= WORTH_PROCESS;
}

/**
 * Prepares the content in a process of its own where there is much of it: what a thousand entries leave in memory is then gone before
 * the site generator starts.
 */
export async function prepareApart(options: ApartOrder & Pick<PrepareOptions, 'onProgress' | 'onPhoto'>): Promise<Preparation> {
  const { onProgress, onPhoto, ...order } = options;
  if (!isMuch(order.content)) return preparationOf(await (await import('./prepare.ts')).prepare(options));
  const child = fork(fileURLToPath(programPart('prepare-process')), { serialization: 'advanced', execArgv: [] });
  return await new Promise<Preparation>((resolve, reject) => {
    let preparation: Preparation | null = null;
    child.on('error', reject);
    child.on('message', (message: ApartMessage) => {
      if (message.says === 'progress') (message.of === 'photos' ? onPhoto : onProgress)?.(message.done, message.total);
      else if (message.says === 'done') preparation = message.preparation;
      else reject(new Error(message.reason));
    });
    // Not when it exits: what it said last may still be on its way.
    child.on('close', (code) => {
      if (preparation === null) reject(new Error(`The process that reads the entries ended early (exit code ${String(code)})`));
      else resolve(preparation);
    });
    child.send(order);
  });
}

/** What a build needs of a finished run. */
export function preparationOf({ diagnostics, manifest }: Pick<Prepared, 'diagnostics' | 'manifest'>): Preparation {
  const former = formerAddressPages(manifest.sheets).flatMap(({ path, slug }) => {
    const name = /^teardowns\/([^/]+)$/.exec(path)?.[1];
    return name === undefined ? [] : [[name, slug] as const];
  });
  return { diagnostics, site: manifest.site, slugs: manifest.sheets.map((sheet) => sheet.slug), former };
}
