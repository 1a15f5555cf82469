import { availableParallelism } from 'node:os';
import { extname, basename } from 'node:path';
import sharp from 'sharp';
import type { PhotoSource, PublishedPhoto } from '../../corpus/published-photo.ts';
import type { DataPath, Finding } from '../../diagnostics/finding.ts';
import { parseFrontmatter } from '../../entry/parse-frontmatter.ts';
import { mayState } from '../may-state.ts';
import { notBeside, PICTURES_BESIDE } from '../not-beside.ts';
import { pipelineFinding } from '../pipeline-rule.ts';
import { hashBeside, pathBeside } from '../read-beside.ts';
import type { EntryFile } from '../scan-content.ts';
import type { PhotoKind } from './photo-kind.ts';
import type { PhotoStamps } from './photo-stamps.ts';
import { photoKey, storedPhoto } from './photo-store.ts';

/** A photo of an entry as its sheet needs it. Plain data. */
export interface EntryPhoto {
  /** Place in the entry's list, from 0. */
  readonly index: number;
  readonly file: string;
  /** Hash of the original; null where it is not there. */
  readonly hash: string | null;
  /** Null where it was refused, or where no pages are made. */
  readonly published: PublishedPhoto | null;
  readonly findings: readonly Finding[];
}

interface WantedPhoto {
  readonly source: EntryFile;
  readonly index: number;
  readonly file: string;
  readonly path: string | null;
  readonly hash: string | null;
}

/** Where pictures are kept, whether they are made, and whom to tell how far it is. */
export interface PhotoStep {
  readonly cache: string;
  readonly stamps: PhotoStamps;
  /** `check` looks at the originals and makes nothing of them. */
  readonly encode: boolean;
  readonly onDone: (done: number, total: number) => void;
}

/** Looks at the photos that these entries name and makes their pictures, several at a time. By the file of the entry. */
export async function photosOfEntries(
  jobs: readonly { readonly source: EntryFile; readonly text: string }[],
  step: PhotoStep,
): Promise<ReadonlyMap<string, readonly EntryPhoto[]>> {
  const wanted = jobs.flatMap(({ source, text }) =>
    photoFilesIn(text).flatMap((file, index) =>
      file === null
        ? []
        : [{ source, index, file, path: pathBeside(source.path, file), hash: hashBeside(source.path, file, step.stamps.hashOfPhoto) }],
    ),
  );
  if (wanted.length === 0) return new Map();
  const photos = await inTurns(wanted, step);
  const byFile = Map.groupBy(wanted.map((each, at) => ({ file: each.source.file, photo: photos[at] })), ({ file }) => file); // prettier-ignore
  return new Map([...byFile].map(([file, group]) => [file, group.flatMap(({ photo }) => photo ?? [])]));
}

/** As many originals at a time as there are cores, each on one thread: more than one thread a picture only waits for itself. */
async function inTurns(wanted: readonly WantedPhoto[], step: PhotoStep): Promise<readonly EntryPhoto[]> {
  sharp.concurrency(1);
  sharp.cache(false);
  const photos: EntryPhoto[] = [];
  // One original that several entries or places name is made once.
  const made = new Map<string, Promise<unknown>>();
  let [next, done] = [0, 0];
  const work = async (): Promise<void> => {
    for (let at = next++; at < wanted.length; at = next++) {
      const each = wanted[at];
      if (each === undefined) continue;
      await made.get(each.hash ?? '');
      const running = entryPhoto(each, step);
      if (each.hash !== null) made.set(each.hash, running);
      photos[at] = await running;
      step.onDone(++done, wanted.length);
    }
  };
  await Promise.all(Array.from({ length: Math.min(availableParallelism(), 8) }, work));
  return photos;
}

/** Files of the photos in their order; null for one whose form is wrong, which the entry's reader says. */
function photoFilesIn(text: string): readonly (string | null)[] {
  if (!mayState(text, 'photos')) return [];
  const { data } = parseFrontmatter(text);
  const stated: unknown = typeof data === 'object' && data !== null && 'photos' in data ? data.photos : undefined;
  if (!Array.isArray(stated)) return [];
  return stated.map((photo: unknown) =>
    typeof photo === 'object' && photo !== null && 'file' in photo && typeof photo.file === 'string' ? photo.file : null,
  );
}

async function entryPhoto(wanted: WantedPhoto, { cache, encode }: PhotoStep): Promise<EntryPhoto> {
  const { source, index, file, path, hash } = wanted;
  const at: DataPath = ['photos', index, 'file'];
  const nothing = { index, file, hash, published: null };
  if (path === null || hash === null) return { ...nothing, findings: [notThere(source, file, at)] };
  const key = photoKey(hash);
  try {
    const { inspection, made } = await storedPhoto(cache, key, path, encode);
    if (!inspection.ok) return { ...nothing, findings: [finding('photo-refused', `"${file}" is not published: ${inspection.reason}`, at)] };
    const { width, height, kind } = inspection;
    const name = addressName(source.slug, file, key);
    const sources = (made ?? []).map((each): PhotoSource => ({
      ...each,
      address: `${name}-${String(each.width)}.${each.format === 'jpeg' ? 'jpg' : 'webp'}`,
    }));
    const published = made === null ? null : { file, width, height, sources, digest: key };
    return { index, file, hash, published, findings: nameRemark(file, kind, at) };
  } catch (error) {
    const reason = error instanceof Error ? (error.message.split('\n')[0] ?? '') : String(error);
    return { ...nothing, findings: [finding('photo-refused', `"${file}" is not published: it cannot be decoded (${reason})`, at)] };
  }
}

/** "/photos/larkmoor-65/board-top-1a2b3c4d": the name tells what it is, the hash that it is this very picture. */
function addressName(slug: string, file: string, key: string): string {
  const stem = basename(file, extname(file))
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '');
  return `/photos/${slug}/${stem === '' ? 'photo' : stem.slice(0, 60)}-${key.slice(0, 8)}`;
}

function finding(rule: 'photo-missing' | 'photo-refused' | 'photo-name', message: string, path: DataPath): Finding {
  return pipelineFinding(rule, message, { in: 'data', path, part: 'value' });
}

const ENDINGS: Readonly<Record<PhotoKind, RegExp>> = { jpeg: /\.jpe?g$/i, png: /\.png$/i, webp: /\.webp$/i };

function nameRemark(file: string, kind: PhotoKind, at: DataPath): readonly Finding[] {
  return ENDINGS[kind].test(file) ? [] : [finding('photo-name', `"${file}" is a ${kind.toUpperCase()} by its content`, at)];
}

function notThere({ path }: EntryFile, file: string, at: DataPath): Finding {
  return finding('photo-missing', notBeside(path, file, PICTURES_BESIDE), at);
}
