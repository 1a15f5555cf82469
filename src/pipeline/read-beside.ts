import { createHash } from 'node:crypto';
import { closeSync, openSync, readdirSync, readFileSync, readSync, realpathSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve, sep, win32 } from 'node:path';

/** Bytes of a file beside an entry, or null where it is not there, is no file, or lies outside the entry's folder. */
export function readBeside(entryPath: string, name: string): Buffer | null {
  const path = pathBeside(entryPath, name);
  return path === null ? null : orNull(() => readFileSync(path));
}

/** Where a file beside an entry lies, or null where it is not there, is no file, or lies outside the entry's folder. */
export function pathBeside(entryPath: string, name: string): string | null {
  const found = lookBeside(entryPath, name);
  return found.is === 'there' ? found.path : null;
}

/** What became of a name that an entry gives for a file beside it. */
export type Beside =
  | { readonly is: 'there'; readonly path: string }
  | { readonly is: 'outside' }
  /** The name on disk, which differs in upper and lower case only. */
  | { readonly is: 'other case'; readonly spelling: string }
  | { readonly is: 'absent' };

/**
 * Looks for a file by the name that an entry gives. The spelling is compared with what the folder lists, so that an entry that one
 * file system takes holds on every other.
 */
export function lookBeside(entryPath: string, name: string): Beside {
  const folder = orNull(() => realpathSync(dirname(entryPath)));
  if (folder === null) return { is: 'absent' };
  const steps = relative(folder, resolve(folder, name)).split(sep);
  if (win32.isAbsolute(name) || steps[0] === '..') return { is: 'outside' };
  const spelt = onDisk(folder, steps);
  if (spelt === null) return { is: 'absent' };
  const path = orNull(() => realpathSync(join(folder, ...spelt)));
  if (path === null) return { is: 'absent' };
  if (!path.startsWith(folder + sep)) return { is: 'outside' };
  if (orNull(() => statSync(path).isFile()) !== true) return { is: 'absent' };
  const isSpeltSo = spelt.every((step, at) => step.normalize() === steps[at]?.normalize());
  return isSpeltSo ? { is: 'there', path } : { is: 'other case', spelling: spelt.join('/') };
}

/** The steps of a path as their folders list them; null where one is not there in any case. */
function onDisk(folder: string, steps: readonly string[]): readonly string[] | null {
  const spelt: string[] = [];
  for (const step of steps) {
    const names = orNull(() => readdirSync(join(folder, ...spelt))) ?? [];
    // An accented letter is one code point on one system and two on another.
    const composed = step.normalize();
    const listed =
      names.find((each) => each === step) ??
      names.find((each) => each.normalize() === composed) ??
      names.find((each) => each.normalize().toLowerCase() === composed.toLowerCase());
    if (listed === undefined) return null;
    spelt.push(listed);
  }
  return spelt;
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
