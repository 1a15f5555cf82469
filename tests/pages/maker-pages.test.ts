import { expect, test } from 'vitest';
import { plannedMakerPages } from '../../src/pages/maker-pages.ts';
import { inventedPart, inventedSheet } from '../corpus/invented-sheet.ts';
import { drawnAt, inventedCorpus } from './invented-corpus.ts';

const own = inventedSheet({ slug: 'own', maker: 'Ostrel', name: 'Pebble', published: '2026-01-01' });
const withPart = inventedSheet({ slug: 'with-part', parts: [inventedPart({ number: 'OC7', maker: 'Ostrel' })] });

test('a maker of devices and of parts lists its devices first', () => {
  const { html, head } = drawnAt(plannedMakerPages(inventedCorpus([own, withPart])), '/makers/ostrel/');
  expect(head.title).toBe('Ostrel');
  expect(html).toContain('1 device sold under this name; 1 part number of this maker; its parts on 1 sheet.');
  expect([...html.matchAll(/<h2 id="(.)-t">([^<]*)/g)].map((match) => match.slice(1))).toEqual([
    ['B', 'Devices'],
    ['C', 'Parts'],
  ]);
});

test('a maker of parts alone has its parts in zone B, each with the sheets that have it', () => {
  const { html } = drawnAt(plannedMakerPages(inventedCorpus([withPart])), '/makers/ostrel/');
  expect(html).toContain('<h2 id="B-t">Parts</h2>');
  expect(html).toContain('<a href="/parts/oc7/">OC7</a>');
  expect(html).toContain('<a href="/teardowns/with-part/">Larkmoor with-part</a>');
});

test('of more than four sheets with a part the newest four are linked and the others counted', () => {
  const sheets = Array.from({ length: 6 }, (_, index) =>
    inventedSheet({ slug: `s${index}`, parts: [inventedPart({ number: 'OC7' })], published: `2026-01-0${index + 1}` }),
  );
  const { html } = drawnAt(plannedMakerPages(inventedCorpus(sheets)), '/makers/ostrel/');
  expect(html.match(/href="\/teardowns\/s\d\//g)).toEqual(['s5', 's4', 's3', 's2'].map((slug) => `href="/teardowns/${slug}/`));
  expect(html).toContain(' and 2 others');
});

test('a list of more than 200 rows turns, and its second page goes on with the parts', () => {
  const numbers = Array.from({ length: 201 }, (_, index) => inventedPart({ number: `OC${String(index).padStart(3, '0')}` }));
  const pages = plannedMakerPages(inventedCorpus([inventedSheet({ slug: 'a', parts: numbers })]));
  const first = drawnAt(pages, '/makers/ostrel/').html;
  const second = drawnAt(pages, '/makers/ostrel/page~2/');
  expect(first).toContain('<a href="/makers/ostrel/page~2/">2</a>');
  expect(first).not.toContain('OC200');
  expect(second.html).toContain('OC200');
  expect(second.html).toContain('<span class="q">201 to 201</span> of <span class="q">201</span>');
  expect(second.head).toMatchObject({ title: 'Ostrel, page 2', canonical: '/makers/ostrel/page~2/' });
});

test('two spellings of a name point to each other, on their pages and in the index', () => {
  const pages = plannedMakerPages(inventedCorpus([own, inventedSheet({ slug: 'b', maker: 'OSTREL' })]));
  expect(drawnAt(pages, '/makers/ostrel/').html).toContain('Perhaps the same as <a href="/makers/o~strel~/">OSTREL</a>');
  expect(drawnAt(pages, '/makers/o~strel~/').html).toContain('Perhaps the same as <a href="/makers/ostrel/">Ostrel</a>');
  expect(drawnAt(pages, '/makers/').html).toContain('<span class="sub">perhaps the same as OSTREL</span>');
});

test('a site without sheets has an index of makers that says so', () => {
  const pages = plannedMakerPages(inventedCorpus([]));
  expect(pages.map((page) => page.path)).toEqual(['/makers/']);
  expect(drawnAt(pages, '/makers/').html).toContain('No sheet is published yet.');
});

test('the page of a maker follows from its own sheets alone', () => {
  const followed = (sheets: Parameters<typeof inventedCorpus>[0]): unknown =>
    plannedMakerPages(inventedCorpus(sheets)).find((page) => page.path === '/makers/ostrel/')?.follows;
  const before = followed([own, withPart]);
  expect(followed([own, withPart, inventedSheet({ slug: 'c' })])).toEqual(before);
  expect(followed([{ ...own, over: 1 }, withPart])).not.toEqual(before);
  expect(followed([own, { ...withPart, name: 'Renamed' }])).not.toEqual(before);
});
