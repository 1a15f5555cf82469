import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseFrontmatter } from '../src/entry/parse-frontmatter.ts';
import { readEntry } from '../src/entry/read-entry.ts';
import { readFace } from '../src/pipeline/face-outlines.ts';
import { asPhoto } from './as-photo.ts';
import { photosSection, withPhotos } from './photos-section.ts';
import { picturesOf } from './pictures-of.ts';

/**
 * Draws the pictures of the demo entries from their parts, packages, stages and sizes, and writes each entry's `photos:` section.
 * `node demo-pictures/draw-pictures.ts [part of a folder name]`; the same entries give the same pictures.
 */
async function drawPictures(only: string): Promise<void> {
  const folder = join(import.meta.dirname, '../demo/teardowns');
  const lettering = { faces: [readFace('mono'), readFace('symbols')] };
  for (const slug of readdirSync(folder).sort()) {
    if (!slug.includes(only)) continue;
    const file = join(folder, slug, 'index.md');
    const text = readFileSync(file, 'utf8');
    const { entry } = readEntry({ slug, file: `${slug}/index.md`, frontmatter: parseFrontmatter(text).data });
    if (entry === null) throw new Error(`${slug} cannot be read`);
    const pictures = picturesOf(entry, lettering);
    for (const { drawn, lines } of pictures) {
      const jpeg = await asPhoto(drawn.svg);
      writeFileSync(join(folder, slug, lines.file), jpeg);
      process.stdout.write(`${slug}/${lines.file}: ${Math.round(jpeg.length / 1000)} kB, ${lines.callouts.length} callouts\n`);
    }
    writeFileSync(file, withPhotos(text, photosSection(pictures.map(({ lines }) => lines))));
  }
}

await drawPictures(process.argv[2] ?? '');
