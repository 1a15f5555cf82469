import { csvHead, csvRows } from '../corpus/open-data/data-column.ts';
import { deviceData } from '../corpus/open-data/device-data.ts';
import { PART_COLUMNS, partRows } from '../corpus/open-data/part-columns.ts';
import type { PreparedSheet } from '../corpus/prepared.ts';
import { comparedSheet } from '../render/compared-sheet.ts';
import { plannedDevice } from '../render/planned-device.ts';
import { deviceFiles } from './device-files.ts';
import { openDataPath } from './open-data-path.ts';
import type { PageWork } from './page-work.ts';
import { writeIfChanged } from './write-if-changed.ts';

/** Writes the files of one device. */
export function writeDeviceFiles(prepared: string, { entry, derived, photos }: PreparedSheet, { summary, across }: PageWork): void {
  const files = deviceFiles(entry.slug);
  const write = (path: string, text: string): void => void writeIfChanged(openDataPath(prepared, path), text);
  write(files.data, `${JSON.stringify(deviceData(entry, derived, photos))}\n`);
  write(files.compared, JSON.stringify(comparedSheet(summary, across.facts)));
  write(files.planned, JSON.stringify(plannedDevice(entry, derived.shares)));
  // The last one: that it is there tells that all are.
  write(files.parts, csvHead(PART_COLUMNS) + csvRows(PART_COLUMNS, partRows(entry)));
}
