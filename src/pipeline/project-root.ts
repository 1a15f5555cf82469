import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Folder of this package: where its package.json, its `demo/` and its site's configuration are. */
export const PROJECT_ROOT = rootAbove(dirname(fileURLToPath(import.meta.url)));

/** Looked for upwards: the program may run from its sources or joined. */
function rootAbove(folder: string): string {
  const parent = dirname(folder);
  return existsSync(join(folder, 'astro.config.mjs')) || parent === folder ? folder : rootAbove(parent);
}
