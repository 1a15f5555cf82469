import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { PhotoSource, PublishedPhoto } from '../../corpus/published-photo.ts';
import { writeIfChanged } from '../write-if-changed.ts';
import { encodePhoto, ENCODING } from './encode-photo.ts';
import { inspectPhoto, type Inspection } from './inspect-photo.ts';
import { STAMPS } from './photo-stamps.ts';

/** What is kept of one original, by the hash of its bytes and of how it is encoded. */
interface KeptPhoto {
  readonly inspection: Inspection;
  /** Null while it was only looked at. */
  readonly made: readonly Pick<PhotoSource, 'format' | 'width' | 'height' | 'bytes'>[] | null;
}

const INDEX = 'photo.json';

/** Key under which an original's pictures are kept. */
export function photoKey(hash: string): string {
  return createHash('sha256').update(hash).update(ENCODING).digest('hex').slice(0, 24);
}

function folderOf(cache: string, key: string): string {
  return join(cache, 'photos', key);
}

/** File in the cache that holds one picture. */
export function storedFile(cache: string, key: string, { format, width }: Pick<PhotoSource, 'format' | 'width'>): string {
  return join(folderOf(cache, key), `${String(width)}.${format === 'jpeg' ? 'jpg' : 'webp'}`);
}

function readKept(cache: string, key: string): KeptPhoto | null {
  try {
    // Named by original and encoding: whatever lies there is of this shape.
    return JSON.parse(readFileSync(join(folderOf(cache, key), INDEX), 'utf8')) as KeptPhoto;
  } catch {
    return null;
  }
}

function keep(cache: string, key: string, kept: KeptPhoto): void {
  writeIfChanged(join(folderOf(cache, key), INDEX), JSON.stringify(kept));
}

/** An original as far as it is known: looked at, and encoded where pages are made. What was kept is used again. */
export async function storedPhoto(cache: string, key: string, path: string, encode: boolean): Promise<KeptPhoto> {
  const kept = readKept(cache, key);
  const inspection = kept?.inspection ?? (await inspectPhoto(path));
  if (!inspection.ok || !encode || isWhole(cache, key, kept)) {
    const known = { inspection, made: isWhole(cache, key, kept) ? (kept?.made ?? null) : null };
    if (kept === null) keep(cache, key, known);
    return known;
  }
  const encoded = await encodePhoto(path);
  for (const each of encoded) writeIfChanged(storedFile(cache, key, each), each.bytes);
  const made = encoded.map(({ format, width, height, bytes }) => ({ format, width, height, bytes: bytes.length }));
  keep(cache, key, { inspection, made });
  return { inspection, made };
}

function isWhole(cache: string, key: string, kept: KeptPhoto | null): boolean {
  return kept?.made?.every((source) => existsSync(storedFile(cache, key, source))) === true;
}

/** Whether the pictures of a published photo still lie in the cache. */
export function hasPhoto(cache: string, { digest, sources }: PublishedPhoto): boolean {
  return sources.every((source) => existsSync(storedFile(cache, digest, source)));
}

/** Removes the pictures of originals that no entry names any more. */
export function dropPhotos(cache: string, keep: ReadonlySet<string>): void {
  const folder = join(cache, 'photos');
  if (!existsSync(folder)) return;
  for (const name of readdirSync(folder))
    if (!keep.has(name) && name !== STAMPS) rmSync(join(folder, name), { recursive: true, force: true });
}
