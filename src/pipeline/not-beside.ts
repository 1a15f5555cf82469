import { readdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { didYouMean } from '../entry/nearest-word.ts';
import { lookBeside } from './read-beside.ts';
import { byText } from './text-order.ts';

/** Pictures beside an entry, those that would be refused too. */
export const PICTURES_BESIDE = { word: 'picture', names: /\.(?:jpe?g|png|webp|tiff?|hei[cf])$/i } as const;

/**
 * Why a file that an entry names cannot be taken, in words: it lies elsewhere, is spelt otherwise, or is not there.
 *
 * @param kind what the entry looks for: its word, and the endings of such files, which are listed instead
 */
export function notBeside(entryPath: string, name: string, kind: { readonly word: string; readonly names: RegExp }): string {
  const found = lookBeside(entryPath, name);
  if (found.is === 'outside')
    return `"${name}" lies outside the folder of the entry; a ${kind.word} lies in that folder itself, not behind a path or a link that leads out of it`;
  if (found.is === 'other case') return `The file is spelt "${found.spelling}", not "${name}": upper and lower case count on most servers`;
  const files = filesBeside(entryPath).filter((each) => kind.names.test(each));
  const nearest = didYouMean(name, files);
  const others = files.length === 0 ? `it has no ${kind.word}` : `it has ${files.map((each) => `"${each}"`).join(', ')}`;
  return `There is no file "${name}" in the folder of the entry; ${others}${nearest === null ? '' : `. ${nearest}`}`;
}

function filesBeside(entryPath: string): readonly string[] {
  try {
    return readdirSync(dirname(entryPath)).sort(byText);
  } catch {
    return [];
  }
}
