import { createHash } from 'node:crypto';
import { closeSync, openSync, readdirSync, readFileSync, readSync, statSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { OutputFault } from '../check-output.ts';
import { byText } from '../text-order.ts';
import { HEAD, pictureContainer, type PictureContainer } from './picture-container.ts';
import { metadataIn, metadataInText } from './picture-metadata.ts';
import { toldBy } from './told-by.ts';

/** Largest picture that a page may fetch, in bytes. */
export const LARGEST_PICTURE = 2 * 1024 * 1024;

/** Largest film that is looked over, in bytes: it stands in memory whole. */
const LARGEST_FILM = 1024 * 1024 * 1024;

/** Largest file that can be an original: larger ones are refused beside their entry. */
const LARGEST_ORIGINAL = 40 * 1024 * 1024;

/** Words for what is more than a picture. */
const CARRIERS: Readonly<Partial<Record<PictureContainer, string>>> = { film: 'film', document: 'document', drawing: 'drawing' };

/** Texts beside the pages (`pageFacts`) that can carry a picture in the address of data. */
const TEXT_WITH_PICTURES = /\.(?:css|m?js)$/i;

/** What the site itself writes as text, and its fonts. */
const TEXT = /\.(?:html|css|js|json|csv|xml|txt|woff2|webmanifest)$/i;

const PICTURE = /\.(?:jpe?g|png|webp|avif|gif|tiff?|hei[cf]|jxl)$/i;

/** All files of a folder that may hold a picture, whatever they are called: from its root, forward slashes, in the order of their names. */
export function filesThatMayBePictures(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .map((each) => relative(folder, join(each.parentPath, each.name)).split(sep).join('/'))
    .filter((file) => TEXT_WITH_PICTURES.test(file) || !TEXT.test(file))
    .sort(byText);
}

/**
 * Looks at every picture of a finished site, whoever put it there: none holds metadata (places above all), none is an original, none is
 * over the limit. What is a picture its content says, not its name.
 *
 * @param files from the output folder, forward slashes
 * @param originals hashes (SHA-256, hex) of the originals beside the entries
 */
export function pictureFaults(folder: string, files: readonly string[], originals: readonly string[]): readonly OutputFault[] {
  const untouched = new Set(originals);
  return files.flatMap((file): readonly OutputFault[] => {
    const message = faultOf(join(folder, ...file.split('/')), untouched);
    return message === null ? [] : [{ page: file, message }];
  });
}

function faultOf(path: string, untouched: ReadonlySet<string>): string | null {
  if (TEXT_WITH_PICTURES.test(path))
    return toldBy(path.endsWith('css') ? 'style sheet' : 'script', metadataInText(readFileSync(path, 'latin1')));
  const { size } = statSync(path);
  const container = pictureContainer(headOf(path));
  const isPicture = container === null ? PICTURE.test(path) : CARRIERS[container] === undefined;
  if (isPicture && size > LARGEST_PICTURE) return `The picture has ${megabytes(size)} MB; a page fetches at most 2 MB at once`;
  const word = (container === null ? undefined : CARRIERS[container]) ?? 'picture';
  if (container !== null && size > LARGEST_FILM) return `The ${word} has ${megabytes(size)} MB, too many to look it over for places`;
  if (container === null && (size > LARGEST_ORIGINAL || untouched.size === 0)) return null;
  const bytes = readFileSync(path);
  if (untouched.size > 0 && untouched.has(createHash('sha256').update(bytes).digest('hex')))
    return 'The picture is an untouched original; list it under photos and take this copy away';
  return toldBy(word, metadataIn(bytes));
}

function megabytes(size: number): string {
  return (size / 1024 / 1024).toFixed(1);
}

function headOf(path: string): Buffer {
  const file = openSync(path, 'r');
  try {
    const head = Buffer.alloc(HEAD);
    return head.subarray(0, readSync(file, head));
  } finally {
    closeSync(file);
  }
}
