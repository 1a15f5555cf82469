import { join } from 'node:path';

/**
 * Where a file that goes into the site as it is stands in the prepared folder, by its path from the root of the site: all in one folder,
 * since making a folder for each device costs as much as writing its files.
 */
export function openDataPath(prepared: string, path: string): string {
  return join(prepared, 'open', path.replaceAll('/', '~'));
}
