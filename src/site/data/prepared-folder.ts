import { createHash } from 'node:crypto';
import { existsSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { readSheetFile } from '../../pipeline/sheet-file.ts';
import type { DrawnSheet } from '../../corpus/drawn-sheet.ts';
import type { Manifest } from '../../corpus/prepared.ts';

let held: { readonly stamp: string; readonly manifest: Manifest } | null = null;

/** The folder that the preparing step wrote, named by SEAMLINE_PREPARED. */
function preparedFolder(): string {
  const folder = process.env['SEAMLINE_PREPARED'];
  if (folder === undefined || !existsSync(join(folder, 'manifest.json'))) {
    throw new Error(
      'No prepared content: the environment variable SEAMLINE_PREPARED has to name a folder with a manifest.json. The command "seamline build" does this.',
    );
  }
  return folder;
}

/** The list of sheets; read once, and again when it was written anew (`dev`). */
export function readManifest(): Manifest {
  const path = join(preparedFolder(), 'manifest.json');
  const { mtimeMs, size } = statSync(path);
  const stamp = `${path} ${mtimeMs} ${size}`;
  if (held?.stamp !== stamp) {
    // Written by our own preparing step a moment ago; its shape is that step's contract.
    held = { stamp, manifest: JSON.parse(readFileSync(path, 'utf8')) as Manifest };
  }
  return held.manifest;
}

/** One drawn sheet, read when its page is made and then forgotten, so that memory does not grow with the number of sheets. */
export function readSheet(slug: string): DrawnSheet {
  return readSheetFile(preparedFolder(), slug);
}

/** Short hash over anything a page depends on, for its cache key. */
export function digestOf(...parts: readonly unknown[]): string {
  return createHash('sha256').update(JSON.stringify(parts)).digest('hex').slice(0, 16);
}
