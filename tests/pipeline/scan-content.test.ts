import { mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { addressOf, isAddress } from '../../src/pipeline/address.ts';
import { scanContent } from '../../src/pipeline/scan-content.ts';
import { contentFolder, temporaryFolder, writeFiles } from './content-folder.ts';

function findingsIn(content: string): string[] {
  return scanContent(content).findings.map(({ file, finding }) => `${file} ${finding.rule}: ${finding.message}`);
}

describe('addresses', () => {
  test.each([
    ['65.5W-unit', '65-5w-unit'],
    ['655W-unit', '655w-unit'],
    [
      'Größe 2',
      'große-2'
        .normalize('NFKD')
        .replace(/\p{Mark}/gu, '')
        .replace('ß', '-'),
    ],
    ['--a--', 'a'],
    ['日本', ''],
  ])('%s has the address %s', (name, address) => {
    expect(addressOf(name)).toBe(address);
  });

  test.each([
    ['lm-q100', true],
    ['LM-Q100', false],
    ['a--b', false],
    ['-a', false],
    ['65.5w', false],
    ['', false],
    ['a_b', false],
  ])('%s is an address: %s', (name, is) => {
    expect(isAddress(name)).toBe(is);
  });
});

describe('folders of teardowns', () => {
  test('two folders with one address are both named', () => {
    const content = contentFolder({
      'teardowns/65.5w-unit/index.md': 'x',
      'teardowns/65-5w-unit/index.md': 'x',
      'teardowns/655w-unit/index.md': 'x',
    });
    const collisions = findingsIn(content).filter((finding) => finding.includes('address-collision'));
    expect(collisions).toEqual([
      'teardowns/65-5w-unit/index.md address-collision: teardowns/65-5w-unit/index.md and teardowns/65.5w-unit/index.md both have the address /teardowns/65-5w-unit/',
      'teardowns/65.5w-unit/index.md address-collision: teardowns/65.5w-unit/index.md and teardowns/65-5w-unit/index.md both have the address /teardowns/65-5w-unit/',
    ]);
  });

  test('folders that differ in case only have one address', () => {
    const content = contentFolder({ 'teardowns/LM/index.md': 'x', 'teardowns/lm/index.md': 'x' });
    expect(findingsIn(content).filter((finding) => finding.includes('address-collision'))).toHaveLength(2);
  });

  test('a file beside a folder of the same name is a collision, another file is a stray one', () => {
    const content = contentFolder({
      'teardowns/lm/index.md': 'x',
      'teardowns/lm.md': 'x',
      'teardowns/other.md': 'x',
      'teardowns/notes.txt': 'x',
    });
    expect(findingsIn(content)).toEqual([
      'teardowns/lm.md address-collision: teardowns/lm.md and teardowns/lm/index.md both have the address /teardowns/lm/',
      'teardowns/notes.txt stray-file: teardowns/notes.txt is a file among the folders of teardowns',
      'teardowns/other.md stray-file: teardowns/other.md is a file among the folders of teardowns; an entry is written in teardowns/other/index.md',
    ]);
  });

  test('a folder without index.md says which file was probably meant', () => {
    const content = contentFolder({ 'teardowns/a/photo.jpg': 'x', 'teardowns/b/Index.md': 'x', 'teardowns/c/c.md': 'x' });
    expect(findingsIn(content)).toEqual([
      'teardowns/a/index.md folder-without-index: The folder teardowns/a has no index.md',
      'teardowns/b/index.md folder-without-index: The folder teardowns/b has no index.md; it has Index.md: rename it to index.md',
      'teardowns/c/index.md folder-without-index: The folder teardowns/c has no index.md; it has c.md: rename it to index.md',
    ]);
  });

  test('a folder name that is no address comes with the one it could have', () => {
    expect(findingsIn(contentFolder({ 'teardowns/LM Q100/index.md': 'x' }))).toEqual([
      'teardowns/LM Q100/index.md address-characters: The folder name "LM Q100" does not make an address: rename the folder to lm-q100',
    ]);
  });

  test('symbolic links that leave the content folder are refused, folder and file alike; one that stays inside is followed', () => {
    const outside = temporaryFolder();
    writeFiles(outside, { 'secret/index.md': 'secret' });
    const content = contentFolder({ 'teardowns/a/index.md': 'x', 'elsewhere/index.md': 'x' });
    symlinkSync(join(outside, 'secret'), join(content, 'teardowns/b'));
    mkdirSync(join(content, 'teardowns/c'));
    symlinkSync(join(outside, 'secret/index.md'), join(content, 'teardowns/c/index.md'));
    symlinkSync(join(content, 'elsewhere'), join(content, 'teardowns/d'));
    symlinkSync(join(content, 'nowhere'), join(content, 'teardowns/e'));
    const listing = scanContent(content);
    expect(listing.entries.map((entry) => entry.slug)).toEqual(['a', 'd']);
    expect(listing.findings.map(({ file, finding }) => [file, finding.rule])).toEqual([
      ['teardowns/b', 'link-outside-content'],
      ['teardowns/c/index.md', 'link-outside-content'],
      ['teardowns/e', 'file-unreadable'],
    ]);
  });

  test('no folder of teardowns, or an empty one, is no fault', () => {
    expect(scanContent(contentFolder({}))).toEqual({ entries: [], findings: [] });
    const content = contentFolder({});
    mkdirSync(join(content, 'teardowns'));
    expect(scanContent(content)).toEqual({ entries: [], findings: [] });
  });

  test('what begins with a dot is not looked at', () => {
    expect(scanContent(contentFolder({ 'teardowns/.DS_Store': 'x', 'teardowns/.git/x': 'x' }))).toEqual({ entries: [], findings: [] });
  });
});
