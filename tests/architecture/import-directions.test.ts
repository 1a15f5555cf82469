import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../..');

/** Rows of the import table in DEVELOPERS.md: folder → folders it may import. */
function importTable(): Map<string, ReadonlySet<string>> {
  const guide = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');
  const start = guide.indexOf('| folder | reason | may import |');
  const lines = guide.slice(start).split('\n').slice(2);
  const end = lines.findIndex((line) => !line.startsWith('|'));
  const rows = end === -1 ? lines : lines.slice(0, end);
  const table = new Map<string, ReadonlySet<string>>();
  for (const row of rows) {
    const [, folder = '', , allowed = ''] = row.split('|').map((cell) => cell.trim());
    const above = [...table.keys()];
    const but = /^all above but (\w+)$/.exec(allowed)?.[1];
    const names = allowed.startsWith('all above') ? above.filter((name) => name !== but) : allowed.split(',').map((name) => name.trim());
    table.set(folder, new Set(names.filter((name) => name !== '')));
  }
  return table;
}

function sourceFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(ts|astro|mjs)$/.test(name))
    .map((name) => join(folder, name));
}

function importsOf(file: string): string[] {
  const text = readFileSync(file, 'utf8');
  return [...text.matchAll(/(?:from|import)\s*\(?\s*['"](\.[^'"]+)['"]/g)].map((match) => match[1] ?? '');
}

const table = importTable();
const src = join(ROOT, 'src');

describe('imports go one way', () => {
  test('the guide has a row for every folder under src, and no row without a folder', () => {
    const folders = readdirSync(src, { withFileTypes: true })
      .filter((item) => item.isDirectory())
      .map((item) => item.name);
    expect([...table.keys()].sort()).toEqual(folders.sort());
  });

  test.each([...table.keys()])('%s imports only what its row allows', (folder) => {
    const allowed = table.get(folder) ?? new Set<string>();
    const wrong: string[] = [];
    for (const file of sourceFiles(join(src, folder))) {
      for (const specifier of importsOf(file)) {
        const target = relative(src, resolve(dirname(file), specifier)).split('/')[0] ?? '';
        if (target !== folder && !allowed.has(target)) wrong.push(`${relative(src, file)} imports ${specifier}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test('nobody imports the command line or the site', () => {
    for (const [folder, allowed] of table) {
      expect(allowed.has('site'), folder).toBe(false);
      if (folder !== 'cli') expect(allowed.has('cli'), folder).toBe(false);
    }
  });
});
