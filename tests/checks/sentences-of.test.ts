import { describe, expect, test } from 'vitest';
import { isWarningAgainst, sentencesOf } from '../../src/checks/sentences-of.ts';

const textsOf = (markdown: string): string[] => sentencesOf(markdown).map((sentence) => sentence.text);

describe('the sentences of a text', () => {
  test('end at a stop before a space, and not inside a number', () => {
    expect(textsOf('It weighs 1.87 g. Really? Yes! 9.1 oz')).toEqual(['It weighs 1.87 g.', 'Really?', 'Yes!', '9.1 oz']);
  });

  test('run over a line break, and end at an empty line, a heading, a list item and a table row', () => {
    expect(textsOf('one\ntwo\n\nthree\n# four\n- five\n- six\n| seven |')).toEqual([
      'one\ntwo',
      'three',
      '# four',
      '- five',
      '- six',
      '| seven |',
    ]);
  });

  test('hold no code, comment or address', () => {
    expect(textsOf('a `is safe` b\n\n```\nis safe\n```\n\n<!-- is safe --> c [d](https://is.safe/) e')).toEqual(
      ['a           b', 'c [d                    e'].map((text) => text),
    );
  });

  test('know where they stand in the text', () => {
    const markdown = 'First.\n\n  Second one. Third.';
    for (const { text, start, end } of sentencesOf(markdown)) expect(markdown.slice(start, end)).toBe(text);
  });

  test('an open fence or comment ends with the text', () => {
    expect(textsOf('a\n\n```\nb')).toEqual(['a']);
    expect(textsOf('a <!-- b')).toEqual(['a']);
  });
});

test('a sentence that warns is told from one that advises', () => {
  expect(isWarningAgainst('Never short it with a screwdriver.')).toBe(true);
  expect(isWarningAgainst('Short it with a screwdriver.')).toBe(false);
});
