import type * as FileSystem from 'node:fs';
import { statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { prepare } from '../../src/pipeline/prepare.ts';
import { contentFolder, entryText, temporaryFolder } from './content-folder.ts';

const opened = vi.hoisted((): string[] => []);

// Every file that is opened is noted, and then opened as ever.
vi.mock('node:fs', async (actual) => {
  const fs = await actual<typeof FileSystem>();
  const openSync: typeof FileSystem.openSync = (path, ...more) => {
    opened.push(String(path));
    return fs.openSync(path, ...more);
  };
  const readFileSync = (path: FileSystem.PathOrFileDescriptor, ...options: [FileSystem.ReadFileSyncOptions?]): Buffer | string => {
    opened.push(String(path));
    return options[0] === undefined ? fs.readFileSync(path) : fs.readFileSync(path, options[0]);
  };
  return { ...fs, openSync, readFileSync };
});

/** JPEGs of one colour each, all of the same number of bytes: zeros behind the end of a JPEG are no part of it. */
async function photo(colour: string): Promise<Buffer> {
  const jpeg = await sharp({ create: { width: 64, height: 48, channels: 3, background: colour } })
    .jpeg()
    .toBuffer();
  return Buffer.concat([jpeg, Buffer.alloc(2000 - jpeg.length)]);
}

describe('the original of a photo', () => {
  beforeEach(() => void vi.useFakeTimers({ toFake: ['Date'] }));
  afterEach(() => void vi.useRealTimers());

  /** An entry with one photo, and runs over it that say how many entries were parsed and whether the original was opened. */
  async function entryWithPhoto() {
    const photos = 'photos:\n  - { file: board.jpg, alt: The board from above }\n';
    const content = contentFolder({
      'teardowns/a/index.md': entryText('A', 'x\n', photos),
      'teardowns/a/board.jpg': await photo('#c02020'),
    });
    const original = join(content, 'teardowns/a/board.jpg');
    const work = temporaryFolder();
    const run = async (mode: 'check' | 'build') => {
      opened.length = 0;
      const { counts, diagnostics } = await prepare({ content, prepared: join(work, 'p'), cache: join(work, 'c'), mode });
      expect(diagnostics.filter(({ rule }) => rule.startsWith('photo-'))).toEqual([]);
      return { parsed: counts.parsed, opens: opened.some((path) => path.endsWith('board.jpg')) };
    };
    return { original, run };
  }

  /** As if the run came a minute after what was written last. */
  function aMinuteLater(): void {
    vi.setSystemTime(Date.now() + 60_000);
  }

  test('is not opened again, by a check or a build, where its size and times are as they were', async () => {
    const { run } = await entryWithPhoto();
    aMinuteLater();
    expect(await run('build')).toEqual({ parsed: 1, opens: true });
    expect(await run('build')).toEqual({ parsed: 0, opens: false });
    expect(await run('check')).toEqual({ parsed: 0, opens: false });
    expect(await run('build')).toEqual({ parsed: 0, opens: false });
  });

  test('is read anew where it was changed to one of the same size at another time', async () => {
    const { original, run } = await entryWithPhoto();
    aMinuteLater();
    await run('build');
    const { size } = statSync(original);
    writeFileSync(original, await photo('#2040c0'));
    utimesSync(original, new Date('2026-01-02T03:04:05Z'), new Date('2026-01-02T03:04:05Z'));
    expect(statSync(original).size).toBe(size);
    expect(await run('build')).toEqual({ parsed: 1, opens: true });
    expect(await run('build')).toEqual({ parsed: 0, opens: false });
  });

  test('is read anew where its time was set back after the change, as a copying program does', async () => {
    const { original, run } = await entryWithPhoto();
    utimesSync(original, new Date('2026-01-02T03:04:05Z'), new Date('2026-01-02T03:04:05Z'));
    aMinuteLater();
    await run('build');
    writeFileSync(original, await photo('#2040c0'));
    utimesSync(original, new Date('2026-01-02T03:04:05Z'), new Date('2026-01-02T03:04:05Z'));
    expect(await run('build')).toEqual({ parsed: 1, opens: true });
  });

  test('is read again while it is so young that another change could bear the same time', async () => {
    const { run } = await entryWithPhoto();
    expect(await run('build')).toEqual({ parsed: 1, opens: true });
    expect(await run('build')).toEqual({ parsed: 0, opens: true });
    aMinuteLater();
    expect(await run('check')).toEqual({ parsed: 0, opens: true });
    expect(await run('check')).toEqual({ parsed: 0, opens: false });
  });

  test('that was only touched is opened once, and its entry is not parsed for it', async () => {
    const { original, run } = await entryWithPhoto();
    aMinuteLater();
    await run('build');
    utimesSync(original, new Date('2026-01-02T03:04:05Z'), new Date('2026-01-02T03:04:05Z'));
    expect(await run('build')).toEqual({ parsed: 0, opens: true });
    expect(await run('build')).toEqual({ parsed: 0, opens: false });
  });
});
