import { existsSync } from 'node:fs';
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

/** A file of open data: where it stands, and where it goes, from the root of the site. */
export interface OpenDataFile {
  readonly from: string;
  readonly path: string;
}

/**
 * The data of the listed devices and the tables over all, as far as they are there. What the comparison and the planner fetch stands under
 * the former names too, so that an address that somebody kept still holds its choice.
 */
export function openDataOfSite(prepared: string, { slugs, former }: PublishedSheets): readonly OpenDataFile[] {
  const own = [...SITE_FILES.map((name) => `data/${name}`), ...slugs.flatMap((slug) => Object.values(deviceFiles(slug)))];
  const underFormer = former.flatMap(([name, slug]) =>
    (['compared', 'planned'] as const).map((kind) => [deviceFiles(slug)[kind], deviceFiles(name)[kind]] as const),
  );
  return [...own.map((path) => [path, path] as const), ...underFormer]
    .map(([path, as]) => ({ from: openDataPath(prepared, path), path: as }))
    .filter(({ from }) => existsSync(from));
}
