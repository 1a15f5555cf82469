import { chmodSync, existsSync, lstatSync, mkdtempSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** A mark that a folder was written by this program, so that it may be replaced as a whole. */
export const OUTPUT_MARK = '.seamline-output';

/** Makes an empty folder beside `out`, on the same file system, to build into. */
export function folderBeside(out: string): string {
  const fresh = mkdtempSync(join(dirname(out), `.${basename(out)}.new-`));
  // A temporary folder is closed to others; the published one must be open to the server.
  chmodSync(fresh, 0o755);
  return fresh;
}

/** Whether `out` may be replaced: it is not there, is empty, or was written by this program. */
export function mayReplace(out: string): boolean {
  if (!existsSync(out)) return true;
  if (!lstatSync(out).isDirectory()) return false;
  const names = readdirSync(out);
  return names.length === 0 || names.includes(OUTPUT_MARK);
}

/**
 * Puts the finished folder in the place of `out` by two renames; should the second fail, the first is undone. When this
 * returns, the new folder stands in its place; what was there before is gone when the promise is kept.
 */
export function swapFolder(fresh: string, out: string): Promise<void> {
  if (!existsSync(out)) {
    renameSync(fresh, out);
    return Promise.resolve();
  }
  const aside = mkdtempSync(join(dirname(out), `.${basename(out)}.old-`));
  const old = join(aside, basename(out));
  renameSync(out, old);
  try {
    renameSync(fresh, out);
  } catch (error) {
    renameSync(old, out);
    rmSync(aside, { recursive: true, force: true });
    throw error;
  }
  return rm(aside, { recursive: true, force: true });
}
