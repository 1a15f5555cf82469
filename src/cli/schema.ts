import { z } from 'zod';
import { ENTRY_SCHEMA } from '../entry/schema.ts';
import type { Command } from './command.ts';
import { DONE } from './streams.ts';

export const schema: Command = {
  name: 'schema',
  operand: '',
  meaning: 'print the JSON Schema of the frontmatter, for editors',
  options: [],
  run: (_, __, { stdout }) => {
    const document = z.toJSONSchema(ENTRY_SCHEMA, { target: 'draft-7', io: 'input', reused: 'ref' });
    stdout.write(`${JSON.stringify(document, null, 2)}\n`);
    return Promise.resolve(DONE);
  },
};
