import { describe, expect, test } from 'vitest';
import { checkText } from './read-example.ts';

/** What is said of the alternative text of one photo: severity and message. */
function said(photo: string, more = ''): readonly (readonly [severity: string, message: string])[] {
  const device = 'device: { maker: Larkmoor, model: LM-S30, kind: wall charger }';
  const text = `---\ntitle: A charger\n${device}\n${more}photos:\n  - ${photo}\n---\nText.\n`;
  return checkText('charger', text)
    .diagnostics.filter(({ rule }) => rule === 'photo-description')
    .map(({ severity, message }) => [severity, message]);
}

const PUBLISHED = 'status: published\npublished: 2026-03-14\n';

describe('the alternative text of a photo', () => {
  test.each(['{ file: top.jpg }', '{ file: top.jpg, alt: "" }', '{ file: top.jpg, alt: "  " }'])('%s stops a published entry', (photo) => {
    expect(said(photo, PUBLISHED)).toEqual([['error', 'top.jpg has no text alternative.']]);
  });

  test('a draft may wait for its words', () => {
    expect(said('{ file: top.jpg }')).toEqual([['warning', 'top.jpg has no text alternative.']]);
  });

  test('a file name is no description', () => {
    expect(said('{ file: IMG_2041.jpg, alt: IMG_2041 }', PUBLISHED).map(([severity]) => severity)).toEqual(['warning']);
  });

  test('words are enough', () => {
    expect(said('{ file: top.jpg, alt: Board from the primary side }', PUBLISHED)).toEqual([]);
  });
});
