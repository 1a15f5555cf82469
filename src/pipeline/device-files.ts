import { copyFileSync, existsSync, mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { openDataPath } from './open-data-path.ts';

/**
 * Files of one device, by path from the root of the site: the data for others, and what the comparison and the planner fetch. They go
 * into the site as they are, so no page has to be made for them.
 */
export function deviceFiles(slug: string): Readonly<Record<'data' | 'parts' | 'compared' | 'planned', string>> {
  return {
    data: `teardowns/${slug}/data.json`,
    parts: `teardowns/${slug}/parts.csv`,
    compared: `compare/sheets/${slug}.json`,
    planned: `planner/sheets/${slug}.json`,
  };
}

/** Whether the files of a device are there. */
export function hasDeviceFiles(prepared: string, slug: string): boolean {
  return existsSync(openDataPath(prepared, deviceFiles(slug).parts));
}

/** Files over all devices, in `/data/`. */
const SITE_FILES = ['devices.csv', 'parts.csv', 'datapackage.json', 'device.schema.json'];

/** Sheets of a site, and the names that they had before. */
export interface PublishedSheets {
  readonly slugs: readonly string[];
  readonly former: readonly (readonly [string, string])[];
}

/**
 * Copies the data of the listed devices and the tables over all into a finished site. What the comparison and the planner fetch stands
 * under the former names too, so that an address that somebody kept still holds its choice.
 */
export function copyOpenData(prepared: string, folder: string, { slugs, former }: PublishedSheets): void {
  for (const name of SITE_FILES) copyOpenFile(prepared, folder, `data/${name}`);
  for (const slug of slugs) for (const path of Object.values(deviceFiles(slug))) copyOpenFile(prepared, folder, path);
  for (const [name, slug] of former)
    for (const kind of ['compared', 'planned'] as const) copyOpenFile(prepared, folder, deviceFiles(slug)[kind], deviceFiles(name)[kind]);
}

/** Copies one file into a finished site, where it is there. */
function copyOpenFile(prepared: string, folder: string, path: string, as = path): void {
  const to = join(folder, ...as.split('/'));
  try {
    copyFileSync(openDataPath(prepared, path), to);
  } catch (error) {
    if (!existsSync(openDataPath(prepared, path))) return;
    if (existsSync(dirname(to))) throw error;
    mkdirSync(dirname(to), { recursive: true });
    copyFileSync(openDataPath(prepared, path), to);
  }
}
