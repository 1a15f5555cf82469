import { expect, test } from 'vitest';
import { plannedTopologyPages } from '../../src/pages/topology-pages.ts';
import { inventedPart, inventedSheet, inventedTraits } from '../corpus/invented-sheet.ts';
import { drawnAt, inventedCorpus } from './invented-corpus.ts';

const stress = (ratio: number, verdict: 'over' | 'within') => [
  { role: 'bulk-capacitor', quantity: 'voltage', ratio, limit: 0.9, verdict } as const,
];
const flybacks = [
  inventedSheet({ slug: 'a', ratedWatts: 60, traits: inventedTraits({ stress: stress(0.95, 'over') }), over: 1 }),
  inventedSheet({
    slug: 'b',
    published: '2026-04-01',
    ratedWatts: 65,
    traits: inventedTraits({ stress: stress(0.85, 'within') }),
    outline: null,
  }),
];
const lone = inventedSheet({ slug: 'lone', family: 'buck', glyphs: ['dc-input', 'buck'], ratedWatts: null, densityWPerCm3: null });

test('a family says its place among all, what it is rated for and how often its blocks are met', () => {
  const other = { ...flybacks[1], slug: 'c', glyphs: ['active-clamp-flyback'] };
  const { html, head } = drawnAt(
    plannedTopologyPages(inventedCorpus([...flybacks, inventedSheet(other), lone])),
    '/topologies/active-clamp-flyback/',
  );
  expect(html).toContain('Topology family <span class="q">1</span> of <span class="q">2</span> · <span class="q">3</span> sheets');
  expect(html).toContain('Rated <span class="q">60 to 65 W</span> on these sheets');
  expect(html).toContain('<span class="fside q">2 of 3 sheets</span>');
  expect([...(head.glyphs ?? [])]).toEqual(['rectifier', 'active-clamp-flyback']);
});

test('the barrier is drawn once, on the block that crosses it; a chain on one side of it has none', () => {
  const pages = plannedTopologyPages(inventedCorpus([...flybacks, lone]));
  const isolated = drawnAt(pages, '/topologies/active-clamp-flyback/').html;
  expect(isolated.match(/<svg class="fbarrier"/g)).toHaveLength(1);
  expect(isolated).toMatch(/<li class="crosses"><span class="fglyph"><svg[^>]*><use href="#s-active-clamp-flyback"/);
  expect(isolated).toContain('<b>Mains</b>');
  const direct = drawnAt(pages, '/topologies/buck/').html;
  expect(direct).not.toContain('fbarrier');
  expect(direct).toContain('<b>DC supply</b>');
});

test('a stress over its limit is marked and named beside the table', () => {
  const { html } = drawnAt(plannedTopologyPages(inventedCorpus(flybacks)), '/topologies/active-clamp-flyback/');
  expect(html).toContain('Over the limit somewhere in the family: bulk capacitor, voltage.');
  expect(html).toMatch(/data-head="Worst"><span class="mk over">.*?<span class="q">0\.95<\/span>/);
  expect(html).toContain('data-head="Median">0.90</td>');
});

test('members stand newest first with medians under them; a lone member has none', () => {
  const pages = plannedTopologyPages(inventedCorpus([...flybacks, lone]));
  const family = drawnAt(pages, '/topologies/active-clamp-flyback/').html;
  expect([...family.matchAll(/href="\/teardowns\/([^/]*)/g)].map((match) => match[1])).toEqual(['b', 'a']);
  expect(family).toContain('Median of 2 sheets');
  expect(family).toContain('– no size');
  expect(family).toContain('data-head="Rated W">62.5</td>');
  const alone = drawnAt(pages, '/topologies/buck/').html;
  expect(alone).toContain('One sheet so far, so there is nothing to put beside it yet.');
  expect(alone).toContain('One sheet so far; a spread needs two.');
  expect(alone).not.toContain('<tfoot>');
});

test('a controller met on two sheets leads to its part', () => {
  const parts = [inventedPart({ number: 'OC-1' })];
  const sheets = flybacks.map((sheet) => ({ ...sheet, parts }));
  const { html } = drawnAt(plannedTopologyPages(inventedCorpus(sheets)), '/topologies/active-clamp-flyback/');
  expect(html).toContain('Controllers on two sheets or more: <a class="mono" href="/parts/oc-1/">OC-1</a> <span class="soft">on 2</span>.');
});

test('the list of families links each with its sheets, by size and by power class', () => {
  const { html, head } = drawnAt(plannedTopologyPages(inventedCorpus([...flybacks, lone])), '/topologies/');
  expect(head.description).toBe('2 topology families in 3 teardowns, by the chain of their power stages.');
  expect(html).toContain('2 families so far, the largest first.');
  expect(html.indexOf('/topologies/active-clamp-flyback/')).toBeLessThan(html.indexOf('/topologies/buck/'));
  expect(html).toContain('– rating not known');
  expect(html).toContain('– one sheet');
  expect(html).toMatch(
    /<th scope="row" class="ref">[^<]*<\/th><td class="full"><ul class="plain-list"><li><a href="\/topologies\/active-clamp/,
  );
});

test('a family of more than 200 members turns, and its bars keep one scale', () => {
  const sheets = Array.from({ length: 201 }, (_, index) =>
    inventedSheet({
      slug: `s${String(index)}`,
      densityWPerCm3: index === 0 ? 1.26 : 0.63,
      published: index === 0 ? '2026-09-09' : '2026-01-01',
    }),
  );
  const pages = plannedTopologyPages(inventedCorpus(sheets));
  const second = drawnAt(pages, '/topologies/active-clamp-flyback/page~2/');
  expect(second.head.title).toMatch(/, page 2$/);
  expect(second.html).toContain('<rect class="b" width="50" height="5"/>');
  expect(second.html.match(/class="bar1"/g)).toHaveLength(1);
});
