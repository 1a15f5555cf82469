import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { AstroIntegration } from 'astro';
import subsetFont from 'subset-font';
import { MATHS_REPERTOIRE, MONO_REPERTOIRE, SYMBOL_REPERTOIRE } from './repertoire.ts';

const require = createRequire(import.meta.url);

/** One face: where its file comes from, the characters to keep (null: the file is a subset already), and how CSS knows it. */
interface Face {
  readonly file: string;
  readonly family: string;
  readonly weight: number;
  readonly style: 'normal' | 'italic';
  readonly keep: string | null;
  readonly range: string | null;
}

const LATIN = 'U+0000-00FF,U+0131,U+0152-0153,U+02BB-02BC,U+02C6,U+02DA,U+02DC,U+2000-206F,U+20AC,U+2122';
const LATIN_EXTENDED = 'U+0100-0130,U+0132-0151,U+0154-02BA,U+02BD-02C5,U+1E00-1E9F';

const sans = (subset: 'latin' | 'latin-ext', weight: number, style: 'normal' | 'italic'): Face => ({
  file: `@fontsource/source-sans-3/files/source-sans-3-${subset}-${weight}-${style}.woff2`,
  family: 'Seamline Sans',
  weight,
  style,
  keep: null,
  range: subset === 'latin' ? LATIN : LATIN_EXTENDED,
});
const mono = (weight: number): Face => ({
  file: `@fontsource/iosevka/files/iosevka-latin-${weight}-normal.woff2`,
  family: 'Seamline Mono',
  weight,
  style: 'normal',
  keep: MONO_REPERTOIRE,
  range: null,
});

const FACES: readonly Face[] = [
  sans('latin', 400, 'normal'),
  sans('latin', 400, 'italic'),
  sans('latin', 600, 'normal'),
  sans('latin-ext', 400, 'normal'),
  sans('latin-ext', 600, 'normal'),
  mono(400),
  mono(500),
  mono(600),
  {
    file: '@fontsource/noto-sans-symbols/files/noto-sans-symbols-symbols-400-normal.woff2',
    family: 'Seamline Symbols',
    weight: 400,
    style: 'normal',
    keep: SYMBOL_REPERTOIRE,
    range: null,
  },
  {
    file: '@fontsource/noto-sans-math/files/noto-sans-math-latin-400-normal.woff2',
    family: 'Seamline Maths',
    weight: 400,
    style: 'normal',
    keep: MATHS_REPERTOIRE,
    range: null,
  },
];

/**
 * System faces stretched to the width of ours, so that a page painted before the files arrive does not move when they do.
 * Average widths of lower-case English text: Source Sans 3 0.92 of Arial; Iosevka 0.5 em against 0.6 em of Courier faces.
 */
const METRIC_FALLBACKS =
  "@font-face{font-family:'Seamline Sans Metric';src:local('Arial'),local('Liberation Sans');size-adjust:93%;ascent-override:110%;descent-override:43%;line-gap-override:0%}\n" +
  "@font-face{font-family:'Seamline Mono Metric';src:local('Courier New'),local('Liberation Mono');size-adjust:83.3%;ascent-override:116%;descent-override:34%;line-gap-override:0%}\n";

/**
 * Writes the faces, cut down to the characters of the trade, and the style sheet that names them into `folder` (a cache), and lets pages
 * import it as `seamline-fonts.css`. A face that is there already for the same file and characters is kept.
 */
export function sheetFonts({ folder }: { folder: string }): AstroIntegration {
  return {
    name: 'sheet-fonts',
    hooks: {
      'astro:config:setup': async ({ updateConfig }) => {
        mkdirSync(folder, { recursive: true });
        const rules = await Promise.all(FACES.map((face) => writeFace(folder, face)));
        writeWhole(join(folder, 'fonts.css'), METRIC_FALLBACKS + rules.join('\n'));
        updateConfig({ vite: { resolve: { alias: { 'seamline-fonts.css': join(folder, 'fonts.css') } } } });
      },
    },
  };
}

async function writeFace(folder: string, face: Face): Promise<string> {
  const original = readFileSync(require.resolve(face.file));
  const key = createHash('sha256')
    .update(original)
    .update(face.keep ?? '')
    .digest('hex')
    .slice(0, 12);
  const stem = face.family.toLowerCase().replace(/ /g, '-');
  const name = `${stem}-${face.weight}${face.style === 'italic' ? '-italic' : ''}-${key}.woff2`;
  const target = join(folder, name);
  if (!existsSync(target)) {
    const cut = face.keep === null ? original : await subsetFont(original, face.keep, { targetFormat: 'woff2', noLayoutClosure: true });
    writeWhole(target, cut);
  }
  const range = face.range === null ? '' : `;unicode-range:${face.range}`;
  return `@font-face{font-family:'${face.family}';font-weight:${face.weight};font-style:${face.style};font-display:swap;src:url('./${name}') format('woff2')${range}}`;
}

/** Two builds may share the cache: a file appears whole or not at all, and is left alone where it says the same. */
function writeWhole(path: string, content: string | Uint8Array): void {
  if (existsSync(path) && Buffer.compare(readFileSync(path), Buffer.from(content)) === 0) return;
  const unfinished = `${path}.${process.pid}`;
  writeFileSync(unfinished, content);
  renameSync(unfinished, path);
}
