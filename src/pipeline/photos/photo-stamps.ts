import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { hashOfFile } from '../read-beside.ts';
import { writeIfChanged } from '../write-if-changed.ts';

/** What a file system says of a file without opening it, and the hash that its bytes had then. */
interface Stamp {
  /** Bytes, last change of the content, last change of the file, both in nanoseconds: as text, for they are longer than a number is exact. */
  readonly at: string;
  /** Null where the file had changed so lately that another change might bear the same time. */
  readonly hash: string | null;
}

/** The hashes of the originals of photos by their paths: a file whose size and times are as they were is not read again. */
export interface PhotoStamps {
  /** Hash of a file's bytes; of a photo from the last run where it is as it was then. Throws where the file cannot be read. */
  readonly hashOf: (path: string) => string;
  /** The same, and the file is a photo from now on. */
  readonly hashOfPhoto: (path: string) => string;
  /** Keeps what was asked for in this run for the next one. */
  readonly keep: () => void;
}

/** Name of the list beside the pictures. */
export const STAMPS = 'stamps.json';

/** Coarsest steps in which file systems count time (FAT: 2 s), in nanoseconds. */
const COARSEST_STEP = 2_000_000_000n;

/** The stamps of the last run in this cache; none where it has none. */
export function photoStamps(cache: string): PhotoStamps {
  const file = join(cache, 'photos', STAMPS);
  const last = readStamps(file);
  const now = new Map<string, Stamp>();
  const hashOfPhoto = (path: string): string => {
    // Looked at before it is read: a change while it is read shows in the next run.
    const { at, isSettled } = lookAt(path);
    const known = now.get(path) ?? last.get(path);
    const hash = known?.at === at && known.hash !== null ? known.hash : hashOfFile(path);
    now.set(path, { at, hash: isSettled ? hash : null });
    return hash;
  };
  return {
    hashOfPhoto,
    hashOf: (path) => (last.has(path) || now.has(path) ? hashOfPhoto(path) : hashOfFile(path)),
    keep: () => {
      if (last.size > 0 || now.size > 0) writeIfChanged(file, JSON.stringify(Object.fromEntries(now)));
    },
  };
}

function lookAt(path: string): { readonly at: string; readonly isSettled: boolean } {
  const { size, mtimeNs, ctimeNs } = statSync(path, { bigint: true });
  const latest = mtimeNs > ctimeNs ? mtimeNs : ctimeNs;
  return {
    at: [size, mtimeNs, ctimeNs].map(String).join(' '),
    isSettled: latest + COARSEST_STEP < BigInt(Date.now()) * 1_000_000n,
  };
}

function readStamps(file: string): ReadonlyMap<string, Stamp> {
  try {
    // Written by this very file; half of one is no JSON and counts as none.
    return new Map(Object.entries(JSON.parse(readFileSync(file, 'utf8')) as Readonly<Record<string, Stamp>>));
  } catch {
    return new Map();
  }
}
