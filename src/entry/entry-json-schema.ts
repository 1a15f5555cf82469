import { z } from 'zod';
import { ENTRY_SCHEMA } from './schema.ts';

/** The entry format as JSON Schema, draft 2020-12, for editors that complete and explain keys. */
export function entryJsonSchema(): Readonly<Record<string, unknown>> {
  const { $schema, ...schema } = z.toJSONSchema(ENTRY_SCHEMA, { target: 'draft-2020-12', io: 'input' });
  return { $schema, $id: 'entry.schema.json', title: 'Teardown entry, format version 1', ...schema };
}
