import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { PublishedPhoto } from '../../corpus/published-photo.ts';
import { writeIfChanged } from '../write-if-changed.ts';
import { storedFile } from './photo-store.ts';

/** All pictures of a site: where each stands in the site and in the cache, and the hashes of the originals that must not be there. */
export interface PhotoList {
  readonly pictures: readonly { readonly address: string; readonly file: string }[];
  readonly originals: readonly string[];
}

const LIST = 'photos.json';

/** Writes the list of the pictures of the sheets that are listed. */
export function writePhotoList(
  prepared: string,
  cache: string,
  photos: readonly { readonly published: PublishedPhoto; readonly hash: string }[],
): void {
  const pictures = photos.flatMap(({ published }) =>
    published.sources.map((source) => ({ address: source.address, file: storedFile(cache, published.digest, source) })),
  );
  writeIfChanged(join(prepared, LIST), JSON.stringify({ pictures, originals: photos.map(({ hash }) => hash) } satisfies PhotoList));
}

/** The list that the preparing step wrote; empty where there is none. */
export function readPhotoList(prepared: string): PhotoList {
  try {
    // Written by our own preparing step a moment ago; its shape is that step's contract.
    return JSON.parse(readFileSync(join(prepared, LIST), 'utf8')) as PhotoList;
  } catch {
    return { pictures: [], originals: [] };
  }
}
