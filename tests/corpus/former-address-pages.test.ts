import { expect, it } from 'vitest';
import { formerAddressPages } from '../../src/corpus/former-address-pages.ts';
import { inventedSheet } from './invented-sheet.ts';

it('a former address leads to the sheet, however it was written', () => {
  const { pages, clashes } = formerAddressPages([
    inventedSheet({
      slug: 'lm-q100',
      name: 'Quadra 100',
      formerAddresses: ['quadra', '/teardowns/lm-q-100/', '/2019/quadra.html', 'https://former.example/reviews/quadra/index.html'],
    }),
  ]);
  expect(pages.map((page) => page.path)).toEqual(['2019/quadra.html', 'quadra', 'reviews/quadra', 'teardowns/lm-q-100']);
  expect(new Set(pages.map((page) => page.slug))).toEqual(new Set(['lm-q100']));
  expect(clashes).toEqual([]);
});

it('an address named twice by one sheet has one page', () => {
  const { pages } = formerAddressPages([inventedSheet({ slug: 'new', formerAddresses: ['teardowns/old', '/teardowns/old/'] })]);
  expect(pages).toHaveLength(1);
});

it('an address that two sheets claim leads nowhere, and both are named', () => {
  const { pages, clashes } = formerAddressPages([
    inventedSheet({ slug: 'one', formerAddresses: ['old'] }),
    inventedSheet({ slug: 'two', formerAddresses: ['/old'] }),
  ]);
  expect(pages).toEqual([]);
  expect(clashes.map((clash) => [clash.slug, clash.reason])).toEqual([
    ['one', '2 sheets claim it'],
    ['two', '2 sheets claim it'],
  ]);
});

it('an address in present use is never taken over', () => {
  const { pages, clashes } = formerAddressPages([
    inventedSheet({ slug: 'one' }),
    inventedSheet({ slug: 'two', formerAddresses: ['teardowns/one'] }),
  ]);
  expect(pages).toEqual([]);
  expect(clashes).toEqual([{ slug: 'two', written: 'teardowns/one', reason: 'a present sheet uses this address' }]);
});

it.each(['', '/', '../secret', '/parts/og7014/', 'old?id=4', 'a//b', '.well-known/x', 'old name'])(
  '%j is refused with a reason',
  (written) => {
    const { pages, clashes } = formerAddressPages([inventedSheet({ slug: 'one', formerAddresses: [written] })]);
    expect(pages).toEqual([]);
    expect(clashes).toMatchObject([{ slug: 'one', written }]);
  },
);
