import { counted } from '../units/counted.ts';
import type { DataColumn } from '../corpus/open-data/data-column.ts';
import { DEVICE_COLUMNS } from '../corpus/open-data/device-columns.ts';
import { PART_COLUMNS } from '../corpus/open-data/part-columns.ts';
import { escapeText } from '../figures/markup.ts';
import { stackCell, stackTable } from './stack-table.ts';
import { ZONE_END, sideZone, zoneList, zoneStart } from './zone.ts';

const OPEN = { letter: 'A', title: null, label: 'Data' } as const;
const FILES = { letter: 'B', title: 'Files', label: 'Files' } as const;
const DEVICES = { letter: 'C', title: 'Columns of devices.csv', label: 'Columns of devices.csv' } as const;
const PARTS = { letter: 'D', title: 'Columns of parts.csv', label: 'Columns of parts.csv' } as const;

/** Zones of the page that says which files of data the site has, and what their columns hold. */
export function dataZones(sheetCount: number, licence: string | null): string {
  const terms =
    licence === null ? 'The author has not stated a licence; ask before you publish them again.' : `Licence: ${escapeText(licence)}.`;
  return (
    `${zoneStart(OPEN)}<h1>Data</h1><p class="lead under">Everything on the sheets, to compute with. ${terms}</p>` +
    `${zoneList([OPEN, FILES, DEVICES, PARTS])}${ZONE_END}` +
    sideZone(FILES, FILE_WORDS, fileTable(sheetCount)) +
    sideZone(DEVICES, `<p>${DEVICE_COLUMNS.length} columns.</p>`, columnTable(DEVICE_COLUMNS)) +
    sideZone(PARTS, `<p>${PART_COLUMNS.length} columns.</p>`, columnTable(PART_COLUMNS))
  );
}

const FILE_WORDS =
  '<p>Text in UTF-8, numbers with a decimal point. A field that is not known is empty.</p>' +
  '<p class="note ruled">Addresses of devices and names of parts stay; a renamed device keeps its former addresses as redirects.</p>';

function fileTable(sheetCount: number): string {
  const ofAll = [
    ['devices.csv', `One row for each of ${counted(sheetCount, 'teardown')}; units in the heads, evidence beside each figure.`],
    ['parts.csv', 'One row for each key of every part list, with its rating as found and in numbers.'],
    ['datapackage.json', 'Descriptor of both after the Data Package standard, version 2: columns, types, keys, licence.'],
    ['device.schema.json', 'JSON Schema (draft 2020-12) of the file of one device.'],
  ] as const;
  const ofOne = [
    [
      '/teardowns/…/data.json',
      'One device: stages, ports, parts, measurements and every derived number with its interval, its evidence and, where it was computed, the formula with all that went in. In SI units.',
    ],
    ['/teardowns/…/parts.csv', 'The part list of one device, with the columns of parts.csv.'],
  ] as const;
  const rows = [
    ...ofAll.map(([name, words]) => fileRow(`<a href="/data/${name}">${name}</a>`, words)),
    ...ofOne.map(([path, words]) => fileRow(path, words)),
  ];
  return stackTable(['File', 'What it holds'], `<tbody>${rows.join('')}</tbody>`);
}

function fileRow(name: string, words: string): string {
  return `<tr><th scope="row" class="ref full">${name}</th><td class="full">${words}</td></tr>`;
}

function columnTable<Row>(columns: readonly DataColumn<Row>[]): string {
  const rows = columns.map(
    ({ head, type, description }) =>
      `<tr><th scope="row" class="ref">${escapeText(head)}</th>${stackCell('Type', type)}<td class="full">${escapeText(description)}</td></tr>`,
  );
  return stackTable(['Head', 'Type', 'What it holds'], `<tbody>${rows.join('')}</tbody>`);
}
