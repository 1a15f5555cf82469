import { expect, test } from 'vitest';
import { textAdvance, textOutline, withoutOutline, type FaceOutlines } from '../../src/figures/text-outline.ts';
import { readFace } from '../../src/pipeline/face-outlines.ts';

/** A face of one letter: a square of half an em on the base line. */
const SQUARE: FaceOutlines = {
  unitsPerEm: 100,
  glyph: (character) =>
    character !== 'a'
      ? null
      : {
          advance: 60,
          steps: [
            { letter: 'M', numbers: [0, 0] },
            { letter: 'L', numbers: [50, 0] },
            { letter: 'L', numbers: [50, 50] },
            { letter: 'Z', numbers: [] },
          ],
        },
};

test('a glyph is scaled to its size and turned the right way up', () => {
  expect(textOutline({ text: 'a', faces: [SQUARE], size: 10, x: 3, y: 20 })).toBe('M3 20L8 20L8 15Z');
});

test('letters follow one another by their advance, and a line can be set to its middle or end', () => {
  const line = { text: 'aa', faces: [SQUARE], size: 10, y: 0 };
  expect(textAdvance(line)).toBe(12);
  expect(textOutline({ ...line, x: 0 })).toBe('M0 0L5 0L5 -5ZM6 0L11 0L11 -5Z');
  expect(textOutline({ ...line, x: 12, anchor: 'end' })).toBe(textOutline({ ...line, x: 0 }));
  expect(textOutline({ ...line, x: 6, anchor: 'middle' })).toBe(textOutline({ ...line, x: 0 }));
});

test('a character that no face has is an empty box and never nothing; spaces advance without an outline', () => {
  expect(withoutOutline('a b', [SQUARE])).toEqual(['b']);
  expect(textOutline({ text: 'b', faces: [SQUARE], size: 10, x: 0, y: 0 })).toMatch(/^M0\.6 0L5\.4 0/u);
  expect(textOutline({ text: '\u00a0', faces: [SQUARE], size: 10, x: 0, y: 0 })).toBe('');
});

test('a later face stands in for an earlier one', () => {
  const none: FaceOutlines = { unitsPerEm: 1000, glyph: () => null };
  expect(textOutline({ text: 'a', faces: [none, SQUARE], size: 10, x: 0, y: 0 })).toBe('M0 0L5 0L5 -5Z');
});

test('the mono face gives every character half an em, as it is built to', () => {
  const mono = readFace('mono');
  expect(new Set(Array.from('0Mi W–µΩ²').map((text) => textAdvance({ text, faces: [mono], size: 1000 })))).toEqual(new Set([500]));
});

test('the faces together have the signs of the trade', () => {
  const faces = [readFace('mono'), readFace('symbols')];
  expect(withoutOutline('100–240 V~ 50/60 Hz ⎓ ⌀34 × 80 mm ±0.2 µF Ω W/cm³ −', faces)).toEqual([]);
});
