import { parse } from 'csv-parse/sync';
import { cpSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { openDataOfSite } from '../../src/pipeline/device-files.ts';
import { preparationOf } from '../../src/pipeline/prepare-apart.ts';
import { prepare } from '../../src/pipeline/prepare.ts';
import { contentFolder, entryText, temporaryFolder } from './content-folder.ts';

interface Field {
  readonly name: string;
  readonly type: string;
}
interface Descriptor {
  readonly name: string;
  readonly licenses?: readonly { readonly name: string; readonly title: string }[];
  readonly resources: readonly {
    readonly path: string;
    readonly type?: string;
    readonly schema: { readonly fields: readonly Field[]; readonly primaryKey: readonly string[] };
  }[];
}

async function builtData(content: string): Promise<string> {
  const work = temporaryFolder();
  const { manifest } = await prepare({ content, prepared: join(work, 'p'), cache: join(work, 'c'), mode: 'build' });
  for (const { from, path } of openDataOfSite(join(work, 'p'), preparationOf({ manifest, diagnostics: [] })))
    cpSync(from, join(work, 'site', path));
  return join(work, 'site');
}

const rowsOf = (folder: string, file: string): readonly Readonly<Record<string, string>>[] =>
  // Comma-separated values after RFC 4180, read by a library of its own.
  parse(readFileSync(join(folder, file)), { columns: true, record_delimiter: '\r\n' });

describe('the tables over all devices of the demo bench', () => {
  const content = join(import.meta.dirname, '../../demo');

  test('agree with their descriptor: every head is a field, every cell of its type, every key stands once', async () => {
    const folder = await builtData(content);
    const descriptor = JSON.parse(readFileSync(join(folder, 'data/datapackage.json'), 'utf8')) as Descriptor;
    // Data Package standard 2.0: names of lower-case letters, digits and . _ -; licences with a name of the like.
    expect(descriptor.name).toMatch(/^[a-z0-9._-]+$/);
    expect(descriptor.licenses).toEqual([{ name: 'CC-BY-4.0', title: 'CC BY 4.0' }]);
    const tables = descriptor.resources.filter(({ type }) => type === 'table');
    expect(tables.map(({ path }) => path)).toEqual(['devices.csv', 'parts.csv']);
    for (const { path, schema } of tables) {
      const rows = rowsOf(folder, `data/${path}`);
      expect(rows.length).toBeGreaterThan(7);
      expect(Object.keys(rows[0] ?? {})).toEqual(schema.fields.map(({ name }) => name));
      const keys = rows.map((row) => schema.primaryKey.map((key) => row[key]).join());
      expect(new Set(keys).size).toBe(rows.length);
      for (const { name, type } of schema.fields) {
        const patterns: Readonly<Record<string, RegExp>> = {
          number: /^-?\d+(?:\.\d+)?(?:e-?\d+)?$/,
          integer: /^\d+$/,
          date: /^\d{4}-\d\d-\d\d$/,
          boolean: /^(?:true|false)$/,
        };
        for (const row of rows) if (row[name] !== '') expect(row[name], `${path} ${name}`).toMatch(patterns[type] ?? /./);
      }
    }
  });

  test('the schema of the file of one device, which holds the lengths of its photos, is a resource that is there and is JSON Schema', async () => {
    const folder = await builtData(content);
    const descriptor = JSON.parse(readFileSync(join(folder, 'data/datapackage.json'), 'utf8')) as Descriptor;
    const others = descriptor.resources.filter(({ type }) => type !== 'table').map(({ path }) => path);
    expect(others).toEqual(['device.schema.json']);
    const text = readFileSync(join(folder, 'data', others[0] ?? ''), 'utf8');
    expect(JSON.parse(text)).toMatchObject({ $schema: 'https://json-schema.org/draft/2020-12/schema' });
    expect(text).toContain('The known length in the photo, by which the others are measured');
  });

  test('every part of the list of a device stands in the list of all parts', async () => {
    const folder = await builtData(content);
    const all = new Set(rowsOf(folder, 'data/parts.csv').map((row) => row['id']));
    const own = rowsOf(folder, 'teardowns/marlhythe-causeway-100/parts.csv');
    expect(own.find((row) => row['id'] === 'marlhythe-causeway-100/C5')).toMatchObject({
      'part number': 'HMR-KX-100-450',
      'capacitance (µF)': '100',
      'rated voltage (V)': '450',
      evidence: 'marked',
    });
    for (const row of own) expect(all.has(row['id'])).toBe(true);
  });
});

describe('a draft', () => {
  test('is in no file of data', async () => {
    const draft = entryText('B').replace('status: published', 'status: draft');
    const folder = await builtData(contentFolder({ 'teardowns/a/index.md': entryText('A'), 'teardowns/b/index.md': draft }));
    expect(rowsOf(folder, 'data/devices.csv').map((row) => row['id'])).toEqual(['a']);
    expect(() => readFileSync(join(folder, 'teardowns/b/data.json'))).toThrow();
  });
});
