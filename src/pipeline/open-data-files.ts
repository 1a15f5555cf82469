import { closeSync, existsSync, mkdirSync, openSync, readFileSync, writeSync } from 'node:fs';
import { dirname } from 'node:path';
import { csvHead, csvRows } from '../corpus/open-data/data-column.ts';
import { dataPackage } from '../corpus/open-data/data-package.ts';
import { DEVICE_COLUMNS } from '../corpus/open-data/device-columns.ts';
import { deviceJsonSchema } from '../corpus/open-data/device-schema.ts';
import { PART_COLUMNS } from '../corpus/open-data/part-columns.ts';
import type { Manifest } from '../corpus/prepared.ts';
import { deviceFiles } from './device-files.ts';
import { openDataPath } from './open-data-path.ts';
import { writeIfChanged } from './write-if-changed.ts';

/** Writes the tables over all devices that are listed, their descriptor and the schema of the device file. */
export function writeSiteData(prepared: string, { site, sheets }: Manifest): void {
  const write = (name: string, text: string): void => void writeIfChanged(openDataPath(prepared, `data/${name}`), text);
  write('devices.csv', csvHead(DEVICE_COLUMNS) + csvRows(DEVICE_COLUMNS, sheets));
  write('datapackage.json', `${JSON.stringify(dataPackage({ ...site, devices: sheets.length }), null, 2)}\n`);
  write('device.schema.json', `${JSON.stringify(deviceJsonSchema(), null, 2)}\n`);
  joinPartLists(
    prepared,
    sheets.map(({ slug }) => slug),
  );
}

/** All part lists as one file, a list at a time, so that memory does not grow with the number of entries. */
function joinPartLists(prepared: string, slugs: readonly string[]): void {
  const path = openDataPath(prepared, 'data/parts.csv');
  mkdirSync(dirname(path), { recursive: true });
  const file = openSync(path, 'w');
  const head = csvHead(PART_COLUMNS);
  writeSync(file, head);
  for (const slug of slugs) {
    const list = openDataPath(prepared, deviceFiles(slug).parts);
    if (existsSync(list)) writeSync(file, readFileSync(list, 'utf8').slice(head.length));
  }
  closeSync(file);
}
