import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { PROJECT_ROOT } from './project-root.ts';
import { byText } from './text-order.ts';

// What these folders hold does not change what is read out of an entry.
const OUTSIDE = new Set(['site', 'cli']);

let ofThisProgram: string | undefined;

/** Hash of the code that reads and computes entries, and of the packages it uses: what was cached by other code is not used. */
export function codeVersion(root?: string): string {
  if (root !== undefined) return versionOf(root);
  // A running program stays what it was when it started.
  return (ofThisProgram ??= versionOf(PROJECT_ROOT));
}

function versionOf(root: string): string {
  // Sheets are structured clones, whose form belongs to the runtime.
  const hash = createHash('sha256')
    .update(process.versions.v8)
    .update(readFileSync(join(root, 'package.json')));
  for (const path of codeFiles(join(root, 'src'))) {
    hash.update(relative(root, path).split(sep).join('/')).update('\0').update(readFileSync(path));
  }
  return hash.digest('hex');
}

function codeFiles(source: string): string[] {
  const folders = readdirSync(source, { withFileTypes: true }).filter((each) => each.isDirectory() && !OUTSIDE.has(each.name));
  const files = folders.flatMap((folder) => readdirSync(join(source, folder.name), { withFileTypes: true, recursive: true }));
  return files
    .filter((each) => each.isFile() && /\.(?:ts|json)$/.test(each.name))
    .map((each) => join(each.parentPath, each.name))
    .sort(byText);
}
