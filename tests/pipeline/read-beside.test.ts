import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { lookBeside, pathBeside } from '../../src/pipeline/read-beside.ts';
import { contentFolder, entryText } from './content-folder.ts';
import { prepareIn } from './run-in.ts';

/** Two entries; the first has a photo, one in a folder, and links within and out of its folder. */
function twoEntries(photos: readonly string[] = []): string {
  const list = photos.length === 0 ? '' : `photos:\n${photos.map((file) => `  - { file: '${file}', alt: A board }\n`).join('')}`;
  const content = contentFolder({
    'teardowns/a/index.md': entryText('A', 'x\n', list),
    'teardowns/a/board.jpg': 'x',
    'teardowns/a/deep/Lid.jpg': 'x',
    'teardowns/a/m\u00fcll.jpg': 'x',
    'teardowns/b/index.md': entryText('B'),
    'teardowns/b/secret.jpg': 'x',
  });
  symlinkSync('board.jpg', join(content, 'teardowns/a/within.jpg'));
  symlinkSync('../b/secret.jpg', join(content, 'teardowns/a/out.jpg'));
  symlinkSync('../b', join(content, 'teardowns/a/other'));
  return content;
}

describe('a file that an entry names', () => {
  test.each([
    ['board.jpg', { is: 'there' }],
    ['./board.jpg', { is: 'there' }],
    ['deep/Lid.jpg', { is: 'there' }],
    ['deep/../board.jpg', { is: 'there' }],
    ['within.jpg', { is: 'there' }],
    ['bord.jpg', { is: 'absent' }],
    ['deep', { is: 'absent' }],
    ['.', { is: 'absent' }],
    ['../b/secret.jpg', { is: 'outside' }],
    ['../b/nothing.jpg', { is: 'outside' }],
    ['/etc/hostname', { is: 'outside' }],
    ['C:\\photos\\board.jpg', { is: 'outside' }],
    ['out.jpg', { is: 'outside' }],
    ['other/secret.jpg', { is: 'outside' }],
    ['Board.JPG', { is: 'other case', spelling: 'board.jpg' }],
    ['deep/lid.jpg', { is: 'other case', spelling: 'deep/Lid.jpg' }],
    ['DEEP/Lid.jpg', { is: 'other case', spelling: 'deep/Lid.jpg' }],
  ])('%s: %o', (name, outcome) => {
    const entry = join(twoEntries(), 'teardowns/a/index.md');
    expect(lookBeside(entry, name)).toMatchObject(outcome);
    expect(pathBeside(entry, name) === null).toBe(outcome.is !== 'there');
  });

  test('is found where an accented letter is one code point in the entry and two on disk, or the other way round', () => {
    const entry = join(twoEntries(), 'teardowns/a/index.md');
    expect(lookBeside(entry, 'mu\u0308ll.jpg').is).toBe('there');
  });

  test('gets words for what is wrong with its name, each in its line', async () => {
    const names = ['../b/secret.jpg', 'out.jpg', 'Board.JPG', 'bord.jpg'];
    const { diagnostics } = await prepareIn(twoEntries(names));
    const said = diagnostics.filter(({ rule }) => rule === 'photo-missing');
    expect(said.map(({ line, severity, message }) => `${String(line)} ${severity}: ${message}`)).toEqual([
      expect.stringMatching(/^8 error: "\.\.\/b\/secret\.jpg" lies outside the folder of the entry/),
      expect.stringMatching(/^9 error: "out\.jpg" lies outside the folder of the entry/),
      expect.stringMatching(/^10 error: The file is spelt "board\.jpg", not "Board\.JPG"/),
      expect.stringMatching(/^11 error: There is no file "bord\.jpg".*Did you mean "board\.jpg"/),
    ]);
  });

  test('gets the same words as a log and as a spreadsheet', async () => {
    const content = contentFolder({
      'teardowns/a/index.md': entryText('A', 'x\n', 'parts: ../b/parts.csv\nlogs: { run: RUN.csv }\n'),
      'teardowns/a/run.csv': 'time (s)\n',
      'teardowns/b/index.md': entryText('B'),
      'teardowns/b/parts.csv': 'stage,reference,role\n',
    });
    const said = Object.fromEntries((await prepareIn(content)).diagnostics.map(({ rule, message }) => [rule, message]));
    expect(said['parts-file-missing']).toMatch(/"\.\.\/b\/parts\.csv" lies outside the folder of the entry/);
    expect(said['log-file-missing']).toMatch(/spelt "run\.csv", not "RUN\.csv"/);
  });
});
