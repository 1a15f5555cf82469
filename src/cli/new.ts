import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { entryTemplate } from '../entry/entry-template.ts';
import { addressOf, isAddress } from '../pipeline/address.ts';
import type { Command, GivenOptions } from './command.ts';
import { contentFolder } from './places.ts';
import { DONE, FAILED, type CommandStreams } from './streams.ts';
import { WrongUsage } from './wrong-usage.ts';

export const newEntry: Command = {
  name: 'new',
  operand: '<slug>',
  meaning: 'write the annotated template of an entry',
  options: ['content'],
  run: runNew,
};

function runNew(slug: string, options: GivenOptions, streams: CommandStreams): Promise<number> {
  if (!isAddress(slug)) {
    const suggested = addressOf(slug);
    throw new WrongUsage(
      `"${slug}" does not make an address: lower-case letters, digits and single hyphens${suggested === '' ? '' : `; did you mean "${suggested}"?`}`,
    );
  }
  const path = join(contentFolder(options, streams), 'teardowns', slug, 'index.md');
  const shown = relative(streams.cwd, path);
  if (existsSync(dirname(path))) {
    streams.stderr.write(`${relative(streams.cwd, dirname(path))} is there already; nothing was written.\n`);
    return Promise.resolve(FAILED);
  }
  mkdirSync(dirname(path), { recursive: true });
  // "x": should somebody else write it in this moment, theirs stays.
  writeFileSync(path, entryTemplate(slug), { flag: 'wx' });
  streams.stdout.write(`${shown} is written. Fill it in, then run "seamline check".\n`);
  return Promise.resolve(DONE);
}
