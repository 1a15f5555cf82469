import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { codeVersion } from './code-version.ts';
import { OUTPUT_MARK } from './folder-swap.ts';
import { PROJECT_ROOT } from './project-root.ts';
import { byText } from './text-order.ts';

/** What the pages of a site follow from, apart from the program. */
interface SiteSource {
  /** Folder that the pages are made from. */
  readonly prepared: string;
  readonly base: string;
  readonly address: string | null;
}

let ofThisProgram: string | undefined;

/** Hash over the whole program, the site generator's part included. */
export function programVersion(): string {
  return (ofThisProgram ??= readVersion());
}

function readVersion(): string {
  const hash = createHash('sha256').update(codeVersion());
  for (const path of [
    ...filesOf(join(PROJECT_ROOT, 'src/site')),
    ...filesOf(join(PROJECT_ROOT, 'public')),
    join(PROJECT_ROOT, 'astro.config.mjs'),
  ])
    hash.update(relative(PROJECT_ROOT, path)).update(readFileSync(path));
  return hash.digest('hex');
}

/** Hash over everything that the finished pages follow from: same key, same bytes. */
export function siteKey({ prepared, base, address }: SiteSource): string {
  const hash = createHash('sha256')
    .update(programVersion())
    .update(JSON.stringify([base, address]));
  // The manifest names the digest of every sheet.
  for (const name of readdirSync(prepared)
    .filter((each) => each.endsWith('.json'))
    .sort(byText))
    hash.update(readFileSync(join(prepared, name)));
  return hash.digest('hex');
}

/** Marks a finished folder as written by this program, from this key, in this state. Returns the state. */
export function markOutput(folder: string, key: string): string {
  const state = stateOf(folder);
  const lines = ['Written as a whole by seamline build; the next build replaces it.', `from ${key}`, `state ${state}`, ''];
  writeFileSync(join(folder, OUTPUT_MARK), lines.join('\n'));
  return state;
}

/** Whether the folder holds, untouched, what a build from this key would write. */
export function isUpToDate(folder: string, key: string): boolean {
  const state = markedState(folder);
  return state !== null && markOf(folder).includes(`from ${key}`) && untouchedSince(folder, state);
}

/** The state in which a build left the folder; null where none did. */
export function markedState(folder: string): string | null {
  return (
    markOf(folder)
      .find((line) => line.startsWith('state '))
      ?.slice('state '.length) ?? null
  );
}

/** Whether no file of the folder was edited, added or removed since it was in this state. */
export function untouchedSince(folder: string, state: string): boolean {
  return stateOf(folder) === state;
}

function markOf(folder: string): readonly string[] {
  const mark = join(folder, OUTPUT_MARK);
  return existsSync(mark) ? readFileSync(mark, 'utf8').split('\n') : [];
}

/** Hash over names, sizes and times of the files: enough to see that somebody has edited, added or removed one. */
function stateOf(folder: string): string {
  const hash = createHash('sha256');
  for (const path of filesOf(folder)) {
    if (path === join(folder, OUTPUT_MARK)) continue;
    const { size, mtimeMs } = statSync(path);
    hash.update(`${relative(folder, path)} ${String(size)} ${String(mtimeMs)}\n`);
  }
  return hash.digest('hex');
}

function filesOf(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .map((each) => join(each.parentPath, each.name))
    .sort(byText);
}
