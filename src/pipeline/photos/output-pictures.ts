import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { OutputFault } from '../check-output.ts';
import { byText } from '../text-order.ts';
import { metadataIn } from './picture-metadata.ts';

/** Largest picture that a page may fetch, in bytes. */
export const LARGEST_PICTURE = 2 * 1024 * 1024;

const PICTURE = /\.(?:jpe?g|png|webp|avif|gif|tiff?|hei[cf])$/i;

/** All pictures of a folder, from its root, forward slashes, in the order of their names. */
export function picturesIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile() && PICTURE.test(each.name))
    .map((each) => relative(folder, join(each.parentPath, each.name)).split(sep).join('/'))
    .sort(byText);
}

/**
 * Looks at every picture of a finished site, whoever put it there: none holds metadata (places above all), none is an original, none is
 * over the limit.
 *
 * @param files from the output folder, forward slashes
 * @param originals hashes (SHA-256, hex) of the originals beside the entries
 */
export function pictureFaults(folder: string, files: readonly string[], originals: readonly string[]): readonly OutputFault[] {
  const untouched = new Set(originals);
  return files.flatMap((file): readonly OutputFault[] => {
    const path = join(folder, ...file.split('/'));
    const { size } = statSync(path);
    if (size > LARGEST_PICTURE)
      return [{ page: file, message: `The picture has ${(size / 1024 / 1024).toFixed(1)} MB; a page fetches at most 2 MB at once` }];
    const bytes = readFileSync(path);
    if (untouched.size > 0 && untouched.has(createHash('sha256').update(bytes).digest('hex')))
      return [{ page: file, message: 'The picture is an untouched original; list it under photos and take this copy away' }];
    const held = metadataIn(bytes);
    return held.length === 0
      ? []
      : [
          {
            page: file,
            message: `The picture holds ${held.join(' and ')}, which can tell where and by whom it was taken; store it without`,
          },
        ];
  });
}
