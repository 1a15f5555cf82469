import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeProse } from '../../src/markdown/place-prose.ts';
import { renderProse, type Prose } from '../../src/markdown/render-prose.ts';

const SEED = { seed: 20260314, numRuns: 600 };
const START = 1000;

const PIECES = [
  '# ',
  '## ',
  '- ',
  '1. ',
  '> ',
  '```\n',
  '    ',
  '| a | b |\n|---|---|\n',
  '| 1 | 2 | 3 |\n',
  '~~',
  '**',
  '*',
  '_',
  '`',
  '~',
  ':value[x]',
  ':part[',
  ']',
  '::table{ports}',
  ':::',
  ':',
  '<script>',
  '</script>',
  '<div onclick="x">',
  '</div>',
  '<svg>',
  '<math><mi//xlink:href="data:x,<script>">',
  '<a href="javascript:x">',
  '<!--',
  '-->',
  '<![CDATA[',
  '&#xE000;',
  '[x](../y/)',
  '[x]: /y\n',
  '![x](y.jpg)',
  '![](',
  '[^1]',
  '[^1]: note\n',
  '100~240V~50/60Hz',
  '68*52*29',
  '12:30',
  '5 V⎓3 A',
  '\n',
  '\n\n',
  ' ',
  '\t',
  '\r\n',
  '\uFEFF',
  '\0',
  '\uD800',
  'Ω',
  '<',
  '>',
  '&',
  '"',
  "'",
  '\\',
  '<table><td>',
  '<p',
  '<h1>',
  '</p>',
  '<plaintext>',
  '<template>',
  '<noscript><p title="</noscript><img src=x onerror=1>">',
];
const anyText = fc
  .array(
    fc.oneof({ weight: 3, arbitrary: fc.constantFrom(...PIECES) }, { weight: 1, arbitrary: fc.string({ maxLength: 6, unit: 'binary' }) }),
    { maxLength: 30 },
  )
  .map((pieces) => pieces.join(''));

function render(text: string): Prose {
  const names = {
    values: {},
    showValue: String,
    parts: new Map([['Q1', 'part-Q1']]),
    ports: new Map<string, string>(),
    photos: [],
    methods: new Map<string, string>(),
    tables: new Set(['ports']),
    allTables: new Set(['ports']),
  };
  return renderProse({ text, startOffset: START, slug: 'x', names });
}

describe('whatever an author writes', () => {
  test('it is rendered, every finding lies inside the text, and the same text gives the same bytes', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const prose = render(text);
        for (const { where } of prose.findings) {
          expect(where.in === 'text' && where.start >= START && where.end >= where.start && where.end <= START + text.length).toBe(true);
        }
        expect(render(text)).toEqual(prose);
      }),
      SEED,
    );
  });

  test('no script, style, handler, frame, picture or foreign scheme reaches the page', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        for (const [tag] of render(text).html.matchAll(/<[a-zA-Z/!](?:"[^"]*"|[^">])*>/g)) {
          const bare = tag.toLowerCase().replace(/"[^"]*"/g, '""');
          expect(bare).not.toMatch(
            /^<\/?(?:script|style|iframe|img|svg|math|object|embed|form|template|noscript|plaintext)|\son\w+=|\sstyle=|\ssrc=/,
          );
          for (const [, address = ''] of tag.matchAll(/\shref="([^"]*)"/g)) expect(address).toMatch(/^(?:https?:|mailto:|\/|#|$)/i);
        }
      }),
      SEED,
    );
  });

  test.each(['>'.repeat(20_000), `${'- '.repeat(5000)}x`, `a\n\n${'1. '.repeat(40)}x`, '<div>'.repeat(20_000), '> - '.repeat(20)])(
    'nesting that nobody can follow is one finding, at once',
    (text) => {
      expect(render(text)).toMatchObject({ html: '', findings: [{ rule: 'prose-too-deep', severity: 'error' }] });
      // Without the guard these take minutes, and the test runner gives up.
    },
  );

  test('ids stand once, there is no first-level heading, and cutting at the tables loses no word', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { html, placed } = render(text);
        const ids = [...html.matchAll(/<[^>]*\sid="([^"]*)"/g)].map((match) => match[1]);
        expect(ids.filter((id, at) => ids.indexOf(id) !== at && !/^note-/.test(id ?? ''))).toEqual([]);
        expect(html).not.toContain('<h1');
        const pieces = placeProse(html);
        expect(pieces.filter((piece) => piece.kind === 'table').map((piece) => piece.id)).toEqual(placed);
      }),
      SEED,
    );
  });
});
