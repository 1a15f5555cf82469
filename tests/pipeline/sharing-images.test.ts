import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, expect, test } from 'vitest';
import { drawSharingImages } from '../../src/pipeline/sharing-images.ts';
import { summaryOf } from '../../src/pipeline/summary-of.ts';
import { entriesIn } from '../demo/entries-in.ts';

const folder = mkdtempSync(join(tmpdir(), 'sharing-'));
const prepared = join(folder, 'prepared');
const cache = join(folder, 'cache');
const sheets = entriesIn(join(import.meta.dirname, '../../demo/teardowns'))
  .slice(0, 2)
  .map(({ entry, derived }) => ({ ...summaryOf({ entry, derived }), digest: '' }));

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

function writeManifest(name: string): void {
  mkdirSync(prepared, { recursive: true });
  writeFileSync(join(prepared, 'manifest.json'), JSON.stringify({ site: { name }, sheets }));
}

const kept = (): readonly string[] => readdirSync(join(cache, 'sharing-images')).sort();

test('one image a sheet, of the stated size, small, without metadata', async () => {
  writeManifest('A bench');
  const files = await drawSharingImages(prepared, cache);
  expect(files.map(({ path }) => path)).toEqual(sheets.map(({ slug }) => `teardowns/${slug}/sharing.png`));
  for (const { kept: file } of files) {
    const { format, width, height, exif, icc, xmp } = await sharp(file).metadata();
    expect({ format, width, height, exif, icc, xmp }).toEqual({
      format: 'png',
      width: 1200,
      height: 630,
      exif: undefined,
      icc: undefined,
      xmp: undefined,
    });
    expect(statSync(file).size).toBeLessThan(80_000);
  }
});

test('a sheet that shows the same is not drawn again; one that shows something else is', async () => {
  writeManifest('A bench');
  const first = await drawSharingImages(prepared, cache);
  const [before] = first.map(({ kept: path }) => ({ path, at: statSync(path).mtimeMs, bytes: readFileSync(path) }));
  if (before === undefined) throw new Error('no image');
  await drawSharingImages(prepared, cache);
  expect(statSync(before.path).mtimeMs).toBe(before.at);
  expect(kept()).toHaveLength(2);
  writeManifest('Another bench');
  const renamed = await drawSharingImages(prepared, cache);
  expect(renamed[0]?.kept).not.toBe(before.path);
  // What no sheet shows any more is not kept.
  expect(kept().map((name) => join(cache, 'sharing-images', name))).toEqual(renamed.map(({ kept: path }) => path).sort());
});

test('the same sheet gives the same bytes in another cache', async () => {
  writeManifest('A bench');
  const [one] = await drawSharingImages(prepared, cache);
  const [other] = await drawSharingImages(prepared, join(folder, 'second cache'));
  if (one === undefined || other === undefined) throw new Error('no image');
  expect(readFileSync(other.kept).equals(readFileSync(one.kept))).toBe(true);
});
