import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { deserialize, serialize } from 'node:v8';
import type { PreparedSheet } from '../corpus/prepared.ts';
import { writeIfChanged } from './write-if-changed.ts';

const ENDING = '.sheet';
const DIGEST_LENGTH = 32;

/** A sheet with the bytes that its file has. */
export interface SheetBytes {
  readonly sheet: PreparedSheet;
  readonly bytes: Uint8Array;
}

/**
 * A sheet and its file: the digest, then the data as a structured clone. Values name the values they were computed from, and many name
 * the same one; a structured clone keeps that as one, where JSON writes it out each time (half the bytes, a third of the time).
 */
export function sheetBytes(body: Omit<PreparedSheet, 'digest'>): SheetBytes {
  const data = serialize(body);
  const digest = createHash('sha256').update(data).digest('hex').slice(0, DIGEST_LENGTH);
  return { sheet: { ...body, digest }, bytes: Buffer.concat([Buffer.from(digest, 'latin1'), data]) };
}

/** Where the sheet of an entry stands in the prepared folder. */
function sheetPath(prepared: string, slug: string): string {
  return join(prepared, 'sheets', `${slug}${ENDING}`);
}

/** Reads the sheet that `writeSheet` wrote. Throws where there is none. */
export function readSheetFile(prepared: string, slug: string): PreparedSheet {
  const bytes = readFileSync(sheetPath(prepared, slug));
  // Written by this program a moment ago: the cache is emptied with every change of the program or of its runtime.
  const body = deserialize(bytes.subarray(DIGEST_LENGTH)) as Omit<PreparedSheet, 'digest'>;
  return { ...body, digest: bytes.toString('latin1', 0, DIGEST_LENGTH) };
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
