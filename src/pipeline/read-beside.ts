import { createHash } from 'node:crypto';
import { readFileSync, realpathSync } from 'node:fs';
import { dirname, join, sep } from 'node:path';

/** Bytes of a file beside an entry, or null where it is not there, is no file, or lies outside the entry's folder. */
export function readBeside(entryPath: string, name: string): Buffer | null {
  try {
    const folder = realpathSync(dirname(entryPath));
    const path = realpathSync(join(folder, name));
    return path.startsWith(folder + sep) ? readFileSync(path) : null;
  } catch {
    return null;
  }
}

/** Hash of a file beside an entry, null where it is not there. */
export function hashBeside(entryPath: string, name: string): string | null {
  const bytes = readBeside(entryPath, name);
  return bytes === null ? null : createHash('sha256').update(bytes).digest('hex');
}
