import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { isScalar, parseDocument } from 'yaml';
import { describe, expect, test } from 'vitest';
import { splitFences } from '../../src/entry/frontmatter-fences.ts';
import { scalarPlaces } from '../../src/entry/scalar-places.ts';
import type { DataPath } from '../../src/diagnostics/finding.ts';

const DEMO = resolve(import.meta.dirname, '../../demo/teardowns');

function valuePaths(data: unknown, path: DataPath = []): DataPath[] {
  if (typeof data !== 'object' || data === null) return [path];
  return Object.entries(data).flatMap(([key, value]) => valuePaths(value, [...path, Array.isArray(data) ? Number(key) : key]));
}

function extent(
  yaml: string,
  path: DataPath,
  part: 'key' | 'value' = 'value',
  span?: { readonly start: number; readonly end: number },
): string | null {
  const found = scalarPlaces(yaml)({ in: 'data', path, part, ...(span === undefined ? {} : { span }) });
  return found === null ? null : yaml.slice(found.start, found.end);
}

describe('places of values by the fast parser', () => {
  test.each(readdirSync(DEMO))('are those of the syntax tree: %s', (slug) => {
    const fences = splitFences(readFileSync(join(DEMO, slug, 'index.md'), 'utf8'));
    const yaml = typeof fences === 'string' ? '' : fences.yaml;
    const tree = parseDocument(yaml, { schema: 'core' });
    const places = scalarPlaces(yaml);
    const paths = valuePaths(tree.toJS());
    expect(paths.length).toBeGreaterThan(100);
    for (const path of paths) {
      const node: unknown = tree.getIn(path, true);
      const range = isScalar(node) ? node.range : null;
      const found = places({ in: 'data', path, part: 'value' });
      if (found !== null) expect([path, found.start, found.end]).toEqual([path, range?.[0], range?.[1]]);
    }
    const known = paths.filter((path) => places({ in: 'data', path, part: 'value' }) !== null);
    expect(known.length / paths.length).toBeGreaterThan(0.95);
  });

  test('a value, its key, a piece of it, quotes included', () => {
    const yaml = 'a: { b: "x \\u00b5F", c: 2 }\nd:\n  - one\n  - { e: two }\n';
    expect(extent(yaml, ['a', 'b'])).toBe('"x \\u00b5F"');
    expect(extent(yaml, ['a', 'b'], 'key')).toBe('b');
    expect(extent(yaml, ['a', 'b'], 'value', { start: 2, end: 3 })).toBe('\\u00b5');
    expect(extent(yaml, ['d', 0])).toBe('one');
    expect(extent(yaml, ['d', 1, 'e'])).toBe('two');
    expect(extent(yaml, ['a'])).toBe('a');
    expect(extent(yaml, ['a', 'none'])).toBe('a');
  });

  test.each([
    ['a block text', 'a: |\n  x\n', ['a']],
    ['a group in a list', 'a:\n  - { b: 1 }\n', ['a', 0]],
    ['what is missing in a group of a list', 'a:\n  - { b: 1 }\n', ['a', 0, 'c']],
    ['a key that YAML reads as a number', '0x10: a\n', ['16']],
    ['a text that cannot be read', 'a: [', ['a']],
  ])('leaves %s to the tree', (_, yaml, path) => {
    expect(extent(yaml, path)).toBeNull();
  });
});
