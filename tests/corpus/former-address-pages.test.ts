import { expect, it } from 'vitest';
import { formerAddressPages } from '../../src/corpus/former-address-pages.ts';
import { formerAddressPath } from '../../src/corpus/former-address-path.ts';
import { inventedSheet } from './invented-sheet.ts';

it('a former address leads to the sheet, however it was written', () => {
  const pages = formerAddressPages([
    inventedSheet({
      slug: 'lm-q100',
      name: 'Quadra 100',
      formerAddresses: ['quadra', '/teardowns/lm-q-100/', '/2019/quadra.html', 'https://former.example/reviews/quadra/index.html'],
    }),
  ]);
  expect(pages.map((page) => page.path)).toEqual(['2019/quadra.html', 'quadra', 'reviews/quadra', 'teardowns/lm-q-100']);
  expect(new Set(pages.map((page) => page.slug))).toEqual(new Set(['lm-q100']));
});

it('an address named twice by one sheet has one page', () => {
  const pages = formerAddressPages([inventedSheet({ slug: 'new', formerAddresses: ['teardowns/old', '/teardowns/old/'] })]);
  expect(pages).toHaveLength(1);
});

it('an address that two sheets claim leads nowhere', () => {
  const pages = formerAddressPages([
    inventedSheet({ slug: 'one', formerAddresses: ['old'] }),
    inventedSheet({ slug: 'two', formerAddresses: ['/old'] }),
  ]);
  expect(pages).toEqual([]);
});

it('an address in present use is never taken over', () => {
  const pages = formerAddressPages([inventedSheet({ slug: 'one' }), inventedSheet({ slug: 'two', formerAddresses: ['teardowns/one'] })]);
  expect(pages).toEqual([]);
});

it.each(['', '/', '../secret', '/parts/og7014/', 'Planner', 'feed.xml', '/teardowns/', 'old?id=4', 'a//b', '.well-known/x', 'old name'])(
  '%j has no page, and why is said',
  (written) => {
    expect(formerAddressPages([inventedSheet({ slug: 'one', formerAddresses: [written] })])).toEqual([]);
    expect(formerAddressPath(written)).toMatchObject({ ok: false });
  },
);
