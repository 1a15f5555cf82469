import { entryJsonSchema } from '../entry/entry-json-schema.ts';
import type { Command } from './command.ts';
import { DONE } from './streams.ts';

export const schema: Command = {
  name: 'schema',
  operand: '',
  meaning: 'print the JSON Schema of the frontmatter, for editors',
  options: [],
  run: (_, __, { stdout }) => {
    stdout.write(`${JSON.stringify(entryJsonSchema(), null, 2)}\n`);
    return Promise.resolve(DONE);
  },
};
