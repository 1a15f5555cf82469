import { expect, test } from 'vitest';
import { DEVICE_COLUMNS } from '../../src/corpus/open-data/device-columns.ts';
import { dataPage } from '../../src/pages/data-page.ts';
import { inventedSheet } from '../corpus/invented-sheet.ts';
import { inventedCorpus } from './invented-corpus.ts';

const corpus = inventedCorpus([inventedSheet({ slug: 'a' })]);

test('every column of the file of devices is explained, in the order of the file', () => {
  const { html } = dataPage(corpus).draw();
  const zone = html.slice(html.indexOf('id="C"'), html.indexOf('id="D"'));
  const heads = [...zone.matchAll(/<th scope="row" class="ref">([^<]*)/g)].map((match) => match[1]);
  expect(heads).toEqual(DEVICE_COLUMNS.map((column) => column.head));
  expect(zone).toContain(`<p>${String(DEVICE_COLUMNS.length)} columns.</p>`);
});

test('a licence is said as the author wrote it, and the lack of one is said too', () => {
  const { site } = corpus.manifest;
  const licensed = inventedCorpus([], { site: { ...site, licence: 'CC BY 4.0 & <terms>' } });
  expect(dataPage(licensed).draw().html).toContain('Licence: CC BY 4.0 &amp; &lt;terms&gt;.');
  expect(dataPage(corpus).draw().html).toContain('The author has not stated a licence');
});

test('the page follows from the count of sheets', () => {
  const more = inventedCorpus([inventedSheet({ slug: 'a' }), inventedSheet({ slug: 'b' })]);
  expect(dataPage(more).follows).not.toEqual(dataPage(corpus).follows);
  expect(dataPage(corpus).draw().head.description).toMatch(/^1 teardown as data/);
});
