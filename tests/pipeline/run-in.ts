import { join } from 'node:path';
import type { EntrySteps } from '../../src/pipeline/entry-steps.ts';
import type { PrepareOptions } from '../../src/pipeline/prepare-options.ts';
import { prepare, type Prepared } from '../../src/pipeline/prepare.ts';
import { temporaryFolder } from './content-folder.ts';

/** Prepares a content folder into folders of its own. */
export function prepareIn(content: string, mode: PrepareOptions['mode'] = 'check', steps?: EntrySteps): Promise<Prepared> {
  const work = temporaryFolder();
  return prepare({
    content,
    prepared: join(work, 'prepared'),
    cache: join(work, 'cache'),
    mode,
    ...(steps === undefined ? {} : { steps }),
  });
}

/** "file:line:column rule" of every finding, in order. */
export function placesOf({ diagnostics }: Prepared): string[] {
  return diagnostics.map(({ file, line, column, rule }) => `${file}:${String(line)}:${String(column)} ${rule}`);
}
