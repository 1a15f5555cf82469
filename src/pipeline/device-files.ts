import { copyFileSync, existsSync, mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { csvHead, csvRows } from '../corpus/open-data/data-column.ts';
import { deviceData } from '../corpus/open-data/device-data.ts';
import { PART_COLUMNS, partRows } from '../corpus/open-data/part-columns.ts';
import type { PreparedSheet } from '../corpus/prepared.ts';
import { comparedSheet } from '../render/compared-sheet.ts';
import { plannedDevice } from '../render/planned-device.ts';
import { openDataPath } from './open-data-path.ts';
import type { PageWork } from './page-work.ts';
import { writeIfChanged } from './write-if-changed.ts';

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

/** Writes the files of one device. */
export function writeDeviceFiles(prepared: string, { entry, derived }: PreparedSheet, { summary, across }: PageWork): void {
  const files = deviceFiles(entry.slug);
  const write = (path: string, text: string): void => void writeIfChanged(openDataPath(prepared, path), text);
  write(files.data, `${JSON.stringify(deviceData(entry, derived))}\n`);
  write(files.compared, JSON.stringify(comparedSheet(summary, across.facts)));
  write(files.planned, JSON.stringify(plannedDevice(entry, derived.shares)));
  // The last one: that it is there tells that all are.
  write(files.parts, csvHead(PART_COLUMNS) + csvRows(PART_COLUMNS, partRows(entry)));
}

/** Whether the files of a device are there. */
export function hasDeviceFiles(prepared: string, slug: string): boolean {
  return existsSync(openDataPath(prepared, deviceFiles(slug).parts));
}

/** Copies the files of one device into a finished site. */
export function copyDeviceFiles(prepared: string, folder: string, slug: string): void {
  for (const path of Object.values(deviceFiles(slug))) {
    const from = openDataPath(prepared, path);
    if (!existsSync(from)) continue;
    const to = join(folder, ...path.split('/'));
    mkdirSync(dirname(to), { recursive: true });
    copyFileSync(from, to);
  }
}
