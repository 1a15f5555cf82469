import { mkdirSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { pathToFileURL } from 'node:url';
import sharp, { type Sharp } from 'sharp';
import { JPEG_WIDTHS, WEBP_WIDTHS } from '../src/pipeline/photos/encode-photo.ts';
import { photoStamps } from '../src/pipeline/photos/photo-stamps.ts';
import { photosOfEntries } from '../src/pipeline/photos/photos-of-entries.ts';
import { seededRandom } from './random.ts';

const WIDTH = 4000;
const HEIGHT = 3000;

/** A board from above as a camera sees it: rectangles of parts with lettering, and the noise of a sensor over all. */
async function drawnPhoto(path: string, seed: number): Promise<void> {
  const next = seededRandom(seed);
  const upTo = (limit: number): string => String(Math.floor(next() * limit));
  const parts = Array.from({ length: 220 }, (_, index) => {
    const [x, y] = [upTo(WIDTH), upTo(HEIGHT)];
    const colour = `hsl(${upTo(360)} 35% ${upTo(70)}%)`;
    return `<rect x="${x}" y="${y}" width="${upTo(400)}" height="${upTo(300)}" fill="${colour}"/><text x="${x}" y="${y}" font-size="36" fill="#eee">C${String(index)}</text>`;
  });
  const board = `<svg xmlns="http://www.w3.org/2000/svg" width="${String(WIDTH)}" height="${String(HEIGHT)}"><rect width="100%" height="100%" fill="#25523a"/>${parts.join('')}</svg>`;
  const noise = { type: 'gaussian', mean: 128, sigma: 12 } as const;
  const grain = await sharp({ create: { width: WIDTH, height: HEIGHT, channels: 3, background: '#000', noise } })
    .png({ compressionLevel: 1 })
    .toBuffer();
  await sharp(Buffer.from(board))
    .composite([{ input: grain, blend: 'soft-light' }])
    .jpeg({ quality: 90 })
    .toFile(path);
}

/** What anybody would write first: each output from the original, as many originals at a time as there are cores. */
async function bareLoop(files: readonly string[], into: string): Promise<void> {
  let next = 0;
  const work = async (): Promise<void> => {
    for (let at = next++; at < files.length; at = next++) {
      const file = files[at] ?? '';
      const sized = (width: number): Sharp => sharp(file).autoOrient().resize({ width, withoutEnlargement: true });
      for (const width of WEBP_WIDTHS)
        await sized(width)
          .webp({ quality: 78, effort: 3 })
          .toFile(join(into, `${String(at)}-${String(width)}.webp`));
      for (const width of JPEG_WIDTHS)
        await sized(width)
          .jpeg({ quality: 80, progressive: true })
          .toFile(join(into, `${String(at)}-${String(width)}.jpg`));
    }
  };
  await Promise.all(Array.from({ length: availableParallelism() }, work));
}

async function seconds(run: () => Promise<unknown>): Promise<number> {
  const start = performance.now();
  await run();
  return (performance.now() - start) / 1000;
}

/** Measures the photo step on drawn photos: cold against a bare loop over the same outputs, and warm. */
export async function benchPhotos(work: string, count = 100): Promise<void> {
  rmSync(work, { recursive: true, force: true });
  const folder = join(work, 'content/teardowns/drawn-board');
  for (const each of [folder, join(work, 'bare')]) mkdirSync(each, { recursive: true });
  const names = Array.from({ length: count }, (_, index) => `board-${String(index)}.jpg`);
  for (const [index, name] of names.entries()) await drawnPhoto(join(folder, name), index + 1);
  const text = `---\nphotos:\n${names.map((file) => `  - { file: ${file}, alt: A drawn board }`).join('\n')}\n---\n`;
  const path = join(folder, 'index.md');
  writeFileSync(path, text);
  const jobs = [{ source: { slug: 'drawn-board', file: 'teardowns/drawn-board/index.md', path }, text }];
  // As each run of the program does it: the stamps of the last one first, and kept at the end.
  const photoStep = async (): Promise<void> => {
    const stamps = photoStamps(join(work, 'cache'));
    await photosOfEntries(jobs, { cache: join(work, 'cache'), stamps, encode: true, onDone: () => undefined });
    stamps.keep();
  };
  sharp.cache(false);
  sharp.concurrency(1);
  const bare = await seconds(() =>
    bareLoop(
      names.map((name) => join(folder, name)),
      join(work, 'bare'),
    ),
  );
  const cold = await seconds(photoStep);
  const warm = await seconds(photoStep);
  const megabytes = names.reduce((sum, name) => sum + statSync(join(folder, name)).size, 0) / 1e6;
  const outputs = readdirSync(join(work, 'bare')).length;
  console.log(
    `\n${String(count)} photos of ${String(WIDTH)} × ${String(HEIGHT)} pixels, ${megabytes.toFixed(0)} MB, ${String(outputs)} outputs`,
  );
  console.log(`bare loop over the same outputs    ${bare.toFixed(2).padStart(7)} s`);
  console.log(
    `photo step, cold                   ${cold.toFixed(2).padStart(7)} s  ${(cold / bare).toFixed(2)} × the bare loop (at most 1.2)`,
  );
  console.log(`photo step, warm                   ${warm.toFixed(2).padStart(7)} s  (at most 0.5)`);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href)
  await benchPhotos(join(import.meta.dirname, '.work/photos'), Number(process.argv[2] ?? 100));
