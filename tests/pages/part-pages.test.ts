import { expect, test } from 'vitest';
import type { PartFacts } from '../../src/corpus/part-facts/part-facts.ts';
import { plannedPartPages } from '../../src/pages/part-pages.ts';
import { inventedPart, inventedSheet } from '../corpus/invented-sheet.ts';
import { drawnAt, inventedCorpus } from './invented-corpus.ts';

const capacitor = (number: string, rating: string | null) => inventedPart({ number, rating, role: 'bulk-capacitor', maker: null });
const facts: PartFacts = {
  number: 'HV-47',
  alsoWritten: ['HV47'],
  stated: { rating: '47 µF 400 V', datasheet: 'https://parts.example/?q=<47>&l="en"' },
  note: 'Five & more <sizes>.',
  corrections: [],
  file: 'parts/hv-47.yaml',
  lines: {},
  hash: 'one',
};

test('a part with two spellings has a page each, and each points to the other', () => {
  const sheets = [
    inventedSheet({ slug: 'a', parts: [capacitor('HV-47', null)] }),
    inventedSheet({ slug: 'b', parts: [capacitor('HV47', null)] }),
  ];
  const pages = plannedPartPages(inventedCorpus(sheets));
  expect(drawnAt(pages, '/parts/hv-47/').html).toContain('Perhaps the same as <a class="mono" href="/parts/hv47/">HV47</a>');
  expect(drawnAt(pages, '/parts/hv47/').html).toContain('Perhaps the same as <a class="mono" href="/parts/hv-47/">HV-47</a>');
  expect(drawnAt(pages, '/parts/hv47/').html).not.toContain('/teardowns/a/');
});

test('ratings that contradict each other are said, on the page of the part and in the index', () => {
  const sheets = ['400 V', '450 V'].map((rating, index) => inventedSheet({ slug: `s${index}`, parts: [capacitor('HV-47', rating)] }));
  const pages = plannedPartPages(inventedCorpus(sheets));
  const { html } = drawnAt(pages, '/parts/hv-47/');
  expect(html).toContain('Ratings differ</span> in voltage.');
  expect(html).toContain('<dt>Ratings as found</dt>');
  expect(html).toContain('<span class="class">400\u00a0V <span class="soft">on 1 sheet</span></span>');
  expect(drawnAt(pages, '/parts/').html).toContain('1 number carries ratings that contradict each other.');
});

test('the index puts a number under its role, counts sheets, and says what is not known', () => {
  const part = capacitor('HV-47', null);
  const sheets = [
    inventedSheet({ slug: 'a', parts: [part] }),
    inventedSheet({ slug: 'b', parts: [part, inventedPart({ number: 'OC7' })] }),
  ];
  const { html, head } = drawnAt(plannedPartPages(inventedCorpus(sheets)), '/parts/');
  expect(html).toContain('2 part numbers on 2 sheets; 1 on more than one.');
  expect(html).toMatch(/<b>Bulk capacitor<\/b> 1 number.*?– not marked.*?– none found.*?data-head="Sheets">2</);
  expect(head.description).toBe('2 part numbers found in 2 teardowns, with every place where each was used.');
});

test('a fact sheet stands with its number, and another spelling leads to it', () => {
  const sheets = ['HV-47', 'HV47'].map((number) => inventedSheet({ slug: number.toLowerCase(), parts: [capacitor(number, null)] }));
  const pages = plannedPartPages(inventedCorpus(sheets, { partFacts: [facts] }));
  const own = drawnAt(pages, '/parts/hv-47/').html;
  expect(own).toContain('Also written <span class="q">HV47</span>.');
  expect(own).toContain('<a href="https://parts.example/?q=&lt;47&gt;&amp;l=&quot;en&quot;" rel="noopener">');
  expect(own).toContain('<p>Five &amp; more &lt;sizes&gt;.</p>');
  expect(drawnAt(pages, '/parts/hv47/').html).toContain('another spelling of <a class="mono" href="/parts/hv-47/">HV-47</a>.');
});

test('a part of more than 200 uses turns, and so does an index of more than 200 numbers', () => {
  const numbers = Array.from({ length: 200 }, (_, index) => inventedPart({ number: `OC${String(index).padStart(3, '0')}` }));
  const sheets = Array.from({ length: 201 }, (_, index) =>
    inventedSheet({ slug: `s${String(index)}`, parts: [capacitor('HV-47', null), ...(index === 0 ? numbers : [])] }),
  );
  const pages = plannedPartPages(inventedCorpus(sheets));
  expect(drawnAt(pages, '/parts/hv-47/').html).toContain('<a href="/parts/hv-47/page~2/">2</a>');
  expect(drawnAt(pages, '/parts/hv-47/page~2/').html.match(/href="\/teardowns\//g)).toHaveLength(1);
  expect(drawnAt(pages, '/parts/page~2/').head).toMatchObject({ title: 'Parts, page 2', canonical: '/parts/page~2/' });
});

test('the page of a part follows from its uses and its fact sheet, and from no other part', () => {
  const sheet = inventedSheet({ slug: 'a', parts: [capacitor('HV-47', '400 V'), inventedPart({ number: 'OC7' })] });
  const followed = (parts: typeof sheet.parts, partFacts: readonly PartFacts[] = []): unknown =>
    plannedPartPages(inventedCorpus([{ ...sheet, parts }], { partFacts })).find((page) => page.path === '/parts/hv-47/')?.follows;
  const before = followed(sheet.parts);
  expect(followed([capacitor('HV-47', '400 V')])).toEqual(before);
  expect(followed([capacitor('HV-47', '450 V')])).not.toEqual(before);
  expect(followed(sheet.parts, [facts])).not.toEqual(before);
});
