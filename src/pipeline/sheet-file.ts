import { readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { DrawnSheet } from '../corpus/drawn-sheet.ts';
import { writeIfChanged } from './write-if-changed.ts';

const ENDING = '.sheet';

/** The file of a drawn sheet. */
export function sheetBytes(drawn: DrawnSheet): Uint8Array {
  return Buffer.from(JSON.stringify(drawn));
}

/** Where the sheet of an entry stands in the prepared folder. */
function sheetPath(prepared: string, slug: string): string {
  return join(prepared, 'sheets', `${slug}${ENDING}`);
}

/** Reads the sheet that `writeSheet` wrote. Throws where there is none. */
export function readSheetFile(prepared: string, slug: string): DrawnSheet {
  // Written by this program a moment ago: the cache is emptied with every change of the program.
  return JSON.parse(readFileSync(sheetPath(prepared, slug), 'utf8')) as DrawnSheet;
}

/** Writes a sheet where its bytes differ from what is there. */
export function writeSheet(prepared: string, slug: string, bytes: Uint8Array): void {
  writeIfChanged(sheetPath(prepared, slug), bytes);
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
    if (!name.endsWith(ENDING) || !keep.has(name.slice(0, -ENDING.length))) rmSync(join(folder, name), { force: true });
  }
}
