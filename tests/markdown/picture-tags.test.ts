import { expect, test } from 'vitest';
import { renderProse } from '../../src/markdown/render-prose.ts';

const names = {
  ...{ values: {}, showValue: () => '', parts: new Map(), ports: new Map(), photos: ['board.jpg'] },
  ...{ methods: new Map(), tables: new Set<string>(), allTables: new Set<string>() },
};

test.each([
  '<img src="board.jpg" alt="the board">',
  '<p><img src="board.jpg" alt="the board" onerror="x()"></p>',
  '<picture><source srcset="board.jpg"><img src="board.jpg" alt=""></picture>',
  '<a href="#x"><img src="board.jpg" srcset="board.jpg 2x" alt=""></a>',
])('%s: no untouched original is published by a tag in the text', (text) => {
  const { html } = renderProse({ text: `Words.\n\n${text}\n`, startOffset: 0, slug: 'a', names });
  expect(html).toContain('Words.');
  expect(html).not.toMatch(/<(?:img|picture|source)|board\.jpg/);
});
