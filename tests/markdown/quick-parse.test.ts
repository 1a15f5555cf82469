import fc from 'fast-check';
import remarkDirective from 'remark-directive';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { describe, expect, test } from 'vitest';
import { plainParagraphs } from '../../src/markdown/plain-paragraphs.ts';
import { quickParse } from '../../src/markdown/quick-parse.ts';

const reader = unified().use(remarkParse).use(remarkGfm, { singleTilde: false }).use(remarkDirective).freeze();
const whole = (text: string) => reader.parse(text);

const WORDS = 'The board is small, the can is not; and 120 µF (at 420 V) is what it holds: so be it. Nobody counts turns from fragments';
const LONG = `${WORDS}\nand goes on, over a second line\nand a third`;
const BLOCKS = [
  WORDS,
  LONG,
  LONG,
  '## A heading',
  'A heading\n===',
  'Another\n---',
  '- one\n- two',
  '- one\n\n  more of one',
  '1. first\n2. second',
  '2.5 V is a number and no list',
  '> quoted\n> twice',
  '> lazy\ngoes on here',
  'a | b\n--|--\n1 | 2',
  '| a | b |\n|---|---|\n| 1 | 2 |',
  'with *stars* and `code` and [a link](/x/)',
  'a :part[Q1] in it',
  '::table{port-share}',
  '    indented code',
  'ends with a break  \nhere',
  'ends with a backslash\\\nhere',
  '---',
  '[^1]: a note',
  'see[^1]',
  '[ref]: /x/',
  '![pic](a.jpg)',
  'www.example.org stands bare',
  '<b>bold</b> words',
  '***',
  'Zeile mit Ü und ß',
  '100~240 V~ and ~~gone~~',
  '```\ncode\n\nmore\n```',
  '<!-- hidden\n\nstill -->',
  '',
  ' ',
  'trailing blank ',
];
const text = fc
  .array(fc.tuple(fc.constantFrom(...BLOCKS), fc.constantFrom('\n\n', '\n\n', '\n\n\n', '\n', '\n \n')), { minLength: 1, maxLength: 14 })
  .map((pieces) => pieces.map(([block, gap]) => block + gap).join(''));

describe('reading around plain paragraphs', () => {
  test('gives the tree that reading everything gives, with every position', () => {
    fc.assert(
      fc.property(text, (markdown) => {
        expect(quickParse(markdown, whole)).toEqual(whole(markdown));
      }),
      { seed: 20260314, numRuns: 1500 },
    );
  });

  test('takes paragraphs of words as plain, and nothing that carries a mark', () => {
    const taken = (markdown: string): string[] => plainParagraphs(markdown).map(({ start, end }) => markdown.slice(start, end));
    expect(taken(`${WORDS}\n\n- item\n\n${LONG}`)).toEqual([WORDS, LONG]);
    expect(taken('one *two*\n\n:part[Q1]\n\n12 V\n\na | b')).toEqual([]);
    expect(taken(`\`\`\`\n\n${WORDS}\n\n\`\`\``)).toEqual([]);
  });
});
