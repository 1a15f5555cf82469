import { fileURLToPath } from 'node:url';

/** Folder of this package: where its package.json, its `demo/` and its site's configuration are. */
export const PROJECT_ROOT = fileURLToPath(new URL('../../', import.meta.url));
