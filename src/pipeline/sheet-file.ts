import { readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { writeIfChanged } from './write-if-changed.ts';

/** Where the sheet of an entry stands in the prepared folder. */
function sheetPath(prepared: string, slug: string): string {
  return join(prepared, 'sheets', `${slug}.json`);
}

/** Writes a sheet where its bytes differ from what is there. */
export function writeSheet(prepared: string, slug: string, json: string): void {
  writeIfChanged(sheetPath(prepared, slug), json);
}

/** Whether a sheet of this size is there. */
export function hasSheet(prepared: string, slug: string, bytes: number | null): boolean {
  return bytes === null || statSync(sheetPath(prepared, slug), { throwIfNoEntry: false })?.size === bytes;
}

/** Removes the sheets of entries that are gone. */
export function dropSheets(prepared: string, keep: ReadonlySet<string>): void {
  const folder = join(prepared, 'sheets');
  if (statSync(folder, { throwIfNoEntry: false }) === undefined) return;
  for (const name of readdirSync(folder)) {
    if (!keep.has(name.replace(/\.json$/, ''))) rmSync(join(folder, name), { force: true });
  }
}
