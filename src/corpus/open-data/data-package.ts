import type { DataColumn } from './data-column.ts';
import { DEVICE_COLUMNS } from './device-columns.ts';
import { PART_COLUMNS } from './part-columns.ts';

/** What the descriptor says of the site. */
export interface PackageTerms {
  readonly name: string;
  readonly description: string;
  readonly author: string;
  readonly licence: string | null;
  /** Absolute address of the published site; null while unknown. */
  readonly address: string | null;
  readonly devices: number;
}

/**
 * Descriptor of the published tables after the Data Package standard, version 2 (open standard; descriptor, Data Resource and Table Schema).
 * It states no time, so that the same content gives the same bytes.
 */
export function dataPackage(terms: PackageTerms): Readonly<Record<string, unknown>> {
  return {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    name: nameOf(terms.name),
    title: terms.name,
    description: terms.description,
    ...(terms.address === null ? {} : { homepage: terms.address }),
    contributors: [{ title: terms.author, roles: ['author'] }],
    ...(terms.licence === null ? {} : { licenses: [{ name: licenceName(terms.licence), title: terms.licence }] }),
    resources: [
      resource(
        'devices',
        `One row for each of ${String(terms.devices)} teardowns; /teardowns/<id>/data.json holds each whole, with every part, measurement and length read out of a photo with its interval, after device.schema.json`,
        DEVICE_COLUMNS,
        [],
      ),
      resource('parts', 'One row for each key of a part list', PART_COLUMNS, [
        { fields: ['device'], reference: { resource: 'devices', fields: ['id'] } },
      ]),
      deviceSchema(),
    ],
  };
}

/**
 * What one device's own file holds that no table does, lengths read out of photos among it. The standard has no word for a file whose
 * description is a JSON Schema (`schema` of a resource is a Table Schema), nor for one file a row: so the schema itself is a resource, and
 * the words of the first table lead to the files.
 */
function deviceSchema(): object {
  return {
    name: 'device-schema',
    path: 'device.schema.json',
    format: 'json',
    mediatype: 'application/schema+json',
    encoding: 'utf-8',
    description:
      'JSON Schema (draft 2020-12) of /teardowns/<id>/data.json: parts, measurements, lengths read out of photos, derived values',
  };
}

function resource<Row>(name: string, description: string, columns: readonly DataColumn<Row>[], foreignKeys: readonly object[]): object {
  const fields = columns.map(({ head, type, description: about }) => ({ name: head, type, description: about }));
  return {
    name,
    type: 'table',
    path: `${name}.csv`,
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    description,
    dialect: { delimiter: ',', lineTerminator: '\r\n', quoteChar: '"', doubleQuote: true, header: true },
    schema: { fields, missingValues: [''], primaryKey: ['id'], ...(foreignKeys.length === 0 ? {} : { foreignKeys }) },
  };
}

/** Lower-case letters, digits, dots, hyphens and underscores, as the standard asks of a name. */
function nameOf(title: string): string {
  const plain = title
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/[^a-z0-9._-]+/gu, '-')
    .replaceAll(/^-+|-+$/gu, '');
  return plain === '' ? 'teardowns' : plain;
}

/** "CC BY 4.0" as its identifier "CC-BY-4.0". */
function licenceName(licence: string): string {
  return licence.replaceAll(/[^A-Za-z0-9._-]+/gu, '-').replaceAll(/^-+|-+$/gu, '');
}
