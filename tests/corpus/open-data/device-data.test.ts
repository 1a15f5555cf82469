import { Ajv2020 } from 'ajv/dist/2020.js';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { deviceData } from '../../../src/corpus/open-data/device-data.ts';
import { deviceJsonSchema } from '../../../src/corpus/open-data/device-schema.ts';
import { partIds } from '../../../src/corpus/open-data/part-ids.ts';
import { entriesIn } from '../../demo/entries-in.ts';

const ENTRIES = entriesIn(join(import.meta.dirname, '../../../demo/teardowns'));
// JSON Schema, draft 2020-12, judged by a reference implementation of that standard.
const validate = new Ajv2020({ strict: true, strictTypes: false, allErrors: true }).compile(deviceJsonSchema());

describe('the file of one device', () => {
  test.each(ENTRIES)('$slug fits the published schema', ({ entry, derived }) => {
    const data: unknown = JSON.parse(JSON.stringify(deviceData(entry, derived)));
    expect(validate(data), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
  });

  test('every derived number carries its evidence, and a computed one its formula with all that went in', () => {
    for (const { entry, derived } of ENTRIES) {
      for (const [name, known] of Object.entries(deviceData(entry, derived).derived)) {
        if ('missing' in known) expect(known.missing, name).not.toBe('');
        else if (known.evidence === 'computed') expect(Object.keys(known.inputs ?? {}).length, name).toBeGreaterThan(0);
        else expect(known.written ?? known.reason, name).not.toBeUndefined();
      }
    }
  });

  test('a file with a field that the schema does not know, or a number without evidence, is refused', () => {
    const [first] = ENTRIES;
    if (first === undefined) throw new Error('no entry');
    const data = deviceData(first.entry, first.derived);
    expect(validate({ ...data, colour: 'black' })).toBe(false);
    expect(validate({ ...data, derived: { density: { value: 1, low: 1, high: 1, unit: 'W/m³', significant: 2 } } })).toBe(false);
  });

  test('names of parts are keys: none stands twice', () => {
    for (const { entry } of ENTRIES) expect(new Set(partIds(entry)).size).toBe(entry.parts.length);
  });
});
