import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Manifest, SheetSummary } from '../corpus/prepared.ts';
import { sharingImage, type SharingFaces } from '../render/sharing-image.ts';
import { sharingPath } from '../render/sharing-fields.ts';
import { codeVersion } from './code-version.ts';
import { readFace } from './face-outlines.ts';
import { writeIfChanged } from './write-if-changed.ts';

const FOLDER = 'sharing-images';

/** Images that are encoded at the same time: both cores, while the pages are written beside. */
const AT_ONCE = 2;

/** The image of a sheet: where it is kept, and where it stands in the site. */
export interface SharingFile {
  readonly kept: string;
  /** Path from the root of the site. */
  readonly path: string;
}

/**
 * Draws the sharing images of all sheets of a manifest and keeps them under the hash of what they show and of the code that draws them:
 * a sheet that shows the same is not drawn again, and where none is new no face is read either.
 */
export async function drawSharingImages(prepared: string, cache: string): Promise<readonly SharingFile[]> {
  // The manifest was written by this very version of the program.
  const manifest = JSON.parse(readFileSync(join(prepared, 'manifest.json'), 'utf8')) as Manifest;
  const version = codeVersion();
  const files = manifest.sheets.map((sheet) => ({ sheet, path: sharingPath(sheet.slug), kept: keptPath(cache, version, sheet, manifest) }));
  const missing = files.filter(({ kept }) => !existsSync(kept));
  if (missing.length > 0) await drawAll(missing, manifest, sharingFaces());
  dropImages(join(cache, FOLDER), new Set(files.map(({ kept }) => kept)));
  return files.map(({ kept, path }) => ({ kept, path }));
}

/** Removes what no sheet shows any more. */
function dropImages(folder: string, keep: ReadonlySet<string>): void {
  if (!existsSync(folder)) return;
  for (const name of readdirSync(folder)) if (!keep.has(join(folder, name))) rmSync(join(folder, name), { force: true });
}

/** Faces of the site's lettering, each with those that stand in for characters that it lacks. */
export function sharingFaces(): SharingFaces {
  const [mono, sans, extended, symbols] = [readFace('mono'), readFace('sans'), readFace('sans extended'), readFace('symbols')];
  return { mono: [mono, extended, symbols], sans: [sans, extended, mono, symbols] };
}

function keptPath(cache: string, version: string, sheet: SheetSummary, { site }: Manifest): string {
  const { maker, name, number, revision, published, kind, ports, outline, round, ratedWatts, densityWPerCm3, glyphs, recall } = sheet;
  const shown = [
    site.name,
    maker,
    name,
    number,
    revision,
    published,
    kind,
    ports,
    outline,
    round,
    ratedWatts,
    densityWPerCm3,
    glyphs,
    recall,
  ];
  const key = createHash('sha256').update(version).update(JSON.stringify(shown)).digest('hex').slice(0, 32);
  return join(cache, FOLDER, `${key}.png`);
}

async function drawAll(
  files: readonly { readonly sheet: SheetSummary; readonly kept: string }[],
  { site }: Manifest,
  faces: SharingFaces,
): Promise<void> {
  const waiting = [...files];
  const work = async (): Promise<void> => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
      writeIfChanged(next.kept, await encodeSharingImage(sharingImage(next.sheet, site, faces)));
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
}

/** PNG of sixteen shades between ink and paper, undithered: a drawing in one ink needs no more, and more costs twice the time. */
async function encodeSharingImage(svg: string): Promise<Buffer> {
  return sharp(Buffer.from(svg)).png({ palette: true, colours: 16, dither: 0, compressionLevel: 6, effort: 1 }).toBuffer();
}
