import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font } from 'fontkitten';
import type { FaceOutlines, GlyphOutline, OutlineStep } from '../figures/text-outline.ts';

const require = createRequire(import.meta.url);

const LETTERS = { moveTo: 'M', lineTo: 'L', quadraticCurveTo: 'Q', bezierCurveTo: 'C', closePath: 'Z' } as const;

/** The faces of the site whose lettering is drawn as outlines. */
const FACE_FILES = {
  mono: '@fontsource/iosevka/files/iosevka-latin-500-normal.woff2',
  sans: '@fontsource/source-sans-3/files/source-sans-3-latin-400-normal.woff2',
  'sans extended': '@fontsource/source-sans-3/files/source-sans-3-latin-ext-400-normal.woff2',
  symbols: '@fontsource/noto-sans-symbols/files/noto-sans-symbols-symbols-400-normal.woff2',
} as const;

type OutlinedFace = keyof typeof FACE_FILES;

/** Reads a face from its file; outlines are taken out of it as characters are asked for, each once. */
export function readFace(face: OutlinedFace): FaceOutlines {
  const font = create(readFileSync(require.resolve(FACE_FILES[face])));
  if (font.isCollection) throw new Error(`${FACE_FILES[face]} holds several fonts`);
  const known = new Map<string, GlyphOutline | null>();
  return {
    unitsPerEm: font.unitsPerEm,
    glyph: (character) => {
      const kept = known.get(character);
      if (kept !== undefined) return kept;
      const outline = outlineOf(font, character);
      known.set(character, outline);
      return outline;
    },
  };
}

function outlineOf(font: Font, character: string): GlyphOutline | null {
  const codePoint = character.codePointAt(0);
  if (codePoint === undefined || !font.hasGlyphForCodePoint(codePoint)) return null;
  const glyph = font.glyphForCodePoint(codePoint);
  const steps = glyph.path.commands.map(({ command, args }): OutlineStep => ({ letter: LETTERS[command], numbers: args }));
  return { advance: glyph.advanceWidth, steps };
}
