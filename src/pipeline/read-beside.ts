import { createHash } from 'node:crypto';
import { closeSync, openSync, readFileSync, readSync, realpathSync, statSync } from 'node:fs';
import { dirname, join, sep } from 'node:path';

/** Bytes of a file beside an entry, or null where it is not there, is no file, or lies outside the entry's folder. */
export function readBeside(entryPath: string, name: string): Buffer | null {
  const path = pathBeside(entryPath, name);
  return path === null ? null : orNull(() => readFileSync(path));
}

/** Where a file beside an entry lies, or null where it is not there, is no file, or lies outside the entry's folder. */
export function pathBeside(entryPath: string, name: string): string | null {
  return orNull(() => {
    const folder = realpathSync(dirname(entryPath));
    const path = realpathSync(join(folder, name));
    return path.startsWith(folder + sep) && statSync(path).isFile() ? path : null;
  });
}

/**
 * Hash of a file beside an entry, null where it is not there.
 *
 * @param hashOf where hashes come from; out of the file's bytes unless something else knows them
 */
export function hashBeside(entryPath: string, name: string, hashOf: (path: string) => string = hashOfFile): string | null {
  const path = pathBeside(entryPath, name);
  return path === null ? null : orNull(() => hashOf(path));
}

/** A file may be gone, or closed to us, a moment after it was looked for. */
function orNull<T>(read: () => T): T | null {
  try {
    return read();
  } catch {
    return null;
  }
}

const PIECE = 1 << 20;

/** Hash of a file's bytes, read piece by piece: a log is larger than anything that should stand in memory. */
export function hashOfFile(path: string): string {
  const file = openSync(path, 'r');
  try {
    const hash = createHash('sha256');
    const piece = Buffer.alloc(PIECE);
    for (let read = readSync(file, piece); read > 0; read = readSync(file, piece)) hash.update(piece.subarray(0, read));
    return hash.digest('hex');
  } finally {
    closeSync(file);
  }
}
