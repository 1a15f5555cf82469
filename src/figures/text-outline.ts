import { px } from './markup.ts';

/** One step of a glyph's outline: a letter of SVG path data and its numbers, in font units, y upwards. */
export interface OutlineStep {
  readonly letter: 'M' | 'L' | 'Q' | 'C' | 'Z';
  readonly numbers: readonly number[];
}

/** Outline and advance of one character, in font units. */
export interface GlyphOutline {
  readonly advance: number;
  readonly steps: readonly OutlineStep[];
}

/** One face: `glyph` gives the outline of a character, null for one that it lacks; always the same for the same character. */
export interface FaceOutlines {
  readonly unitsPerEm: number;
  readonly glyph: (character: string) => GlyphOutline | null;
}

/** A line of text to set. `faces`: the first that has a character draws it. */
export interface TextLine {
  readonly text: string;
  readonly faces: readonly FaceOutlines[];
  /** Pixels of an em. */
  readonly size: number;
  readonly x: number;
  /** Base line. */
  readonly y: number;
  readonly anchor?: 'start' | 'middle' | 'end';
}

/** A character that no face has is drawn as an empty box, so that it is seen and not lost: width and height as fractions of an em. */
const BOX = { advance: 0.6, height: 0.7 };

/**
 * Text as SVG path data, without kerning or ligatures: for pictures whose bytes must not depend on the fonts of a machine.
 * Spaces of any kind advance without an outline.
 */
export function textOutline(line: TextLine): string {
  const shift = { start: 0, middle: 0.5, end: 1 }[line.anchor ?? 'start'];
  let x = line.x - shift * textAdvance(line);
  let path = '';
  for (const character of line.text) {
    const { scale, glyph } = glyphOf(line, character);
    path += glyph.steps.map((step) => placed(step, x, line.y, scale)).join('');
    x += glyph.advance * scale;
  }
  return path;
}

/** Width of a line in pixels. */
export function textAdvance(line: Pick<TextLine, 'text' | 'faces' | 'size'>): number {
  return Array.from(line.text).reduce((sum, character) => {
    const { scale, glyph } = glyphOf(line, character);
    return sum + glyph.advance * scale;
  }, 0);
}

/** Characters of `text` that none of the faces has. */
export function withoutOutline(text: string, faces: readonly FaceOutlines[]): readonly string[] {
  return Array.from(new Set(text)).filter((character) => !/\s/u.test(character) && faces.every((face) => face.glyph(character) === null));
}

function glyphOf(line: Pick<TextLine, 'faces' | 'size'>, character: string): { scale: number; glyph: GlyphOutline } {
  for (const face of line.faces) {
    const glyph = face.glyph(character);
    if (glyph !== null) return { scale: line.size / face.unitsPerEm, glyph };
  }
  return { scale: line.size, glyph: /\s/u.test(character) ? { advance: BOX.advance / 2, steps: [] } : emptyBox() };
}

function emptyBox(): GlyphOutline {
  const [left, right, top] = [0.06, BOX.advance - 0.06, BOX.height];
  const corner = (letter: 'M' | 'L', ...numbers: readonly number[]): OutlineStep => ({ letter, numbers });
  const inner = 0.05;
  const close: OutlineStep = { letter: 'Z', numbers: [] };
  const outer = [corner('M', left, 0), corner('L', right, 0), corner('L', right, top), corner('L', left, top), close];
  const hole = [
    corner('M', left + inner, inner),
    corner('L', left + inner, top - inner),
    corner('L', right - inner, top - inner),
    corner('L', right - inner, inner),
    close,
  ];
  return { advance: BOX.advance, steps: [...outer, ...hole] };
}

function placed(step: OutlineStep, x: number, y: number, scale: number): string {
  return step.letter + step.numbers.map((value, index) => px(index % 2 === 0 ? x + value * scale : y - value * scale)).join(' ');
}
