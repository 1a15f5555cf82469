import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create } from 'fontkitten';
import type { FaceOutlines, GlyphOutline, OutlineStep } from '../figures/text-outline.ts';

const require = createRequire(import.meta.url);

const LETTERS = { moveTo: 'M', lineTo: 'L', quadraticCurveTo: 'Q', bezierCurveTo: 'C', closePath: 'Z' } as const;

/** The faces of the site whose lettering is drawn as outlines. */
const FACE_FILES = {
  mono: '@fontsource/iosevka/files/iosevka-latin-500-normal.woff2',
  sans: '@fontsource/source-sans-3/files/source-sans-3-latin-400-normal.woff2',
  'sans extended': '@fontsource/source-sans-3/files/source-sans-3-latin-ext-400-normal.woff2',
  'sans bold': '@fontsource/source-sans-3/files/source-sans-3-latin-600-normal.woff2',
  symbols: '@fontsource/noto-sans-symbols/files/noto-sans-symbols-symbols-400-normal.woff2',
} as const;

export type OutlinedFace = keyof typeof FACE_FILES;

/** Reads the outlines of those characters from a face's file; characters that it lacks are left out. */
export function readFaceOutlines(face: OutlinedFace, characters: Iterable<string>): FaceOutlines {
  const font = create(readFileSync(require.resolve(FACE_FILES[face])));
  if (font.isCollection) throw new Error(`${FACE_FILES[face]} holds several fonts`);
  const glyphs = new Map<string, GlyphOutline>();
  for (const character of new Set(characters)) {
    const codePoint = character.codePointAt(0);
    if (codePoint === undefined || !font.hasGlyphForCodePoint(codePoint)) continue;
    const glyph = font.glyphForCodePoint(codePoint);
    const steps = glyph.path.commands.map(({ command, args }): OutlineStep => ({ letter: LETTERS[command], numbers: args }));
    glyphs.set(character, { advance: glyph.advanceWidth, steps });
  }
  return { unitsPerEm: font.unitsPerEm, glyphs };
}
