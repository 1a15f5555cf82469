import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { folderBeside, mayReplace, OUTPUT_MARK, swapFolder } from '../../src/pipeline/folder-swap.ts';
import { temporaryFolder, writeFiles } from './content-folder.ts';

describe('putting a finished site in place', () => {
  test('the new folder takes the place of the old one, and nothing is left beside it', async () => {
    const folder = temporaryFolder();
    const out = join(folder, 'dist');
    writeFiles(out, { 'old.html': 'old', [OUTPUT_MARK]: '' });
    const fresh = folderBeside(out);
    expect(dirname(fresh)).toBe(folder);
    writeFiles(fresh, { 'new.html': 'new' });
    const gone = swapFolder(fresh, out);
    expect(readdirSync(out)).toEqual(['new.html']);
    await gone;
    expect(readdirSync(folder)).toEqual(['dist']);
    expect(statSync(out).mode & 0o777).toBe(0o755);
  });

  test('where the new folder cannot be moved, the old one is put back', () => {
    const folder = temporaryFolder();
    const out = join(folder, 'dist');
    writeFiles(out, { 'old.html': 'old' });
    expect(() => {
      void swapFolder(join(folder, 'not there'), out);
    }).toThrow();
    expect(readFileSync(join(out, 'old.html'), 'utf8')).toBe('old');
    expect(readdirSync(folder)).toEqual(['dist']);
  });

  test('a folder of somebody else is never replaced', () => {
    const folder = temporaryFolder();
    writeFiles(folder, { 'mine/diary.txt': 'x', file: 'x', [`ours/${OUTPUT_MARK}`]: '' });
    expect(mayReplace(join(folder, 'mine'))).toBe(false);
    expect(mayReplace(join(folder, 'file'))).toBe(false);
    expect(mayReplace(join(folder, 'ours'))).toBe(true);
    expect(mayReplace(join(folder, 'none'))).toBe(true);
    expect(existsSync(join(folder, 'none'))).toBe(false);
  });
});
