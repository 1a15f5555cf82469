import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../..');
const tracked = execFileSync('git', ['ls-files', '-z'], { cwd: ROOT, encoding: 'utf8' })
  .split('\0')
  .filter((name) => name !== '');

test('the lock file names no host, so that any registry will do', () => {
  expect(readFileSync(join(ROOT, 'package-lock.json'), 'utf8')).not.toContain('"resolved"');
});

test('no folder is a drawer', () => {
  const drawers = tracked.filter((name) => /(^|\/)(utils?|helpers?|common|misc|shared|lib)(\/|\.ts$)/.test(name));
  expect(drawers).toEqual([]);
});

test('no file carries originals of photographs with their metadata', () => {
  const pictures = tracked.filter((name) => /\.(jpe?g|heic|tiff?)$/i.test(name));
  const withBlock = pictures.filter((name) => readFileSync(join(ROOT, name)).includes('Exif\0\0'));
  expect(withBlock).toEqual([]);
});

test('every TypeScript file has one main idea: no default exports and no classes but errors', () => {
  const wrong: string[] = [];
  for (const name of tracked.filter((file) => /^src\/.*\.ts$/.test(file))) {
    const text = readFileSync(join(ROOT, name), 'utf8');
    if (/^export default/m.test(text)) wrong.push(`${name}: default export`);
    if (/^(export )?class (?!\w+ extends Error)/m.test(text)) wrong.push(`${name}: class`);
  }
  expect(wrong).toEqual([]);
});
