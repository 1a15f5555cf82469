import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { entryJsonSchema } from '../../src/entry/entry-json-schema.ts';
import { parseFrontmatter } from '../../src/entry/parse-frontmatter.ts';

const SCHEMA = entryJsonSchema();

function accepts(data: unknown): boolean {
  return new Ajv2020({ strict: false }).compile(SCHEMA)(data);
}

describe('the format as JSON Schema', () => {
  it('is draft 2020-12 with a relative name of our own', () => {
    expect(SCHEMA['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(SCHEMA['$id']).toBe('entry.schema.json');
  });

  it('accepts the example entry, in the judgement of another validator', () => {
    expect(accepts(parseFrontmatter(readFileSync('tests/entry/example/index.md', 'utf8')).data)).toBe(true);
  });

  it.each(readdirSync('demo/teardowns'))('accepts the demo entry %s, and says which keyword it breaks', (slug) => {
    const validate = new Ajv2020({ strict: false, allErrors: true }).compile(SCHEMA);
    validate(parseFrontmatter(readFileSync(`demo/teardowns/${slug}/index.md`, 'utf8')).data);
    expect(validate.errors ?? []).toEqual([]);
  });

  it('is itself valid against the meta-schema of its draft', () => {
    expect(new Ajv2020({ strict: false }).validateSchema(SCHEMA)).toBe(true);
  });

  it('refuses a mistyped key and a bare number', () => {
    const device = { maker: 'A', model: 'B', kind: 'wall charger' };
    expect(accepts({ title: 'One', device })).toBe(true);
    expect(accepts({ titel: 'One', title: 'One', device })).toBe(false);
    expect(accepts({ title: 'One', device: { ...device, model: 100 } })).toBe(false);
  });

  it('explains every key of every group to an editor', () => {
    const unexplained: string[] = [];
    const visit = (node: unknown, path: string): void => {
      if (typeof node !== 'object' || node === null) return;
      const properties: unknown = Reflect.get(node, 'properties');
      if (typeof properties === 'object' && properties !== null) {
        for (const [key, value] of Object.entries(properties)) {
          if (typeof value !== 'object' || value === null || !('description' in value)) unexplained.push(`${path}/${key}`);
        }
      }
      for (const [key, value] of Object.entries(node)) visit(value, `${path}/${key}`);
    };
    visit(SCHEMA, '');
    expect(unexplained).toEqual([]);
  });
});
