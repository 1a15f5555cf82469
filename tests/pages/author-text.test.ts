import { expect, test } from 'vitest';
import type { PartFacts } from '../../src/corpus/part-facts/part-facts.ts';
import { dataPage } from '../../src/pages/data-page.ts';
import { plannedMakerPages } from '../../src/pages/maker-pages.ts';
import { plannedPartPages } from '../../src/pages/part-pages.ts';
import { plannedTopologyPages } from '../../src/pages/topology-pages.ts';
import { inventedPart, inventedSheet, inventedTraits } from '../corpus/invented-sheet.ts';
import { inventedCorpus } from './invented-corpus.ts';

const facts: PartFacts = {
  number: '<x>-1',
  alsoWritten: ['<x>1'],
  stated: { maker: '<x>', datasheet: 'https://parts.example/?<x>' },
  note: '<x>',
  corrections: [{ date: '2026-02-01', where: '<x>', was: '<x>', is: '<x>', why: '<x>' }],
  file: 'parts/x.yaml',
  lines: {},
  hash: 'one',
};

/** Six sheets whose every word is a tag: two spellings of a maker and of a part, two makers of one part, one rated far above the rest. */
const sheets = Array.from({ length: 6 }, (_, index) =>
  inventedSheet({
    slug: `s${String(index)}`,
    maker: index % 2 === 0 ? '<x> A' : '<X> A',
    name: '<x>',
    number: '<x>',
    published: '<x>',
    topology: '<x>',
    family: 'odd',
    glyphs: ['<x>'],
    ports: [{ id: '<x>', connector: 'USB-C' }],
    ratedWatts: index === 5 ? 900 : 60 + index,
    parts: [
      inventedPart({
        number: index % 2 === 0 ? '<x>-1' : '<x>1',
        maker: '<x> A',
        role: '<x>-controller',
        stage: '<x>',
        references: ['<x>'],
      }),
      inventedPart({ number: '<x>-1', maker: `<x> ${String(index)}`, rating: '<x>' }),
      inventedPart({ number: '<x>9', maker: null, role: '<x>' }),
    ],
    partMakers: ['<x> A', '<x> unnumbered'],
    traits: inventedTraits({
      fanOut: ['<x>'],
      stress: [{ role: '<x>', quantity: '<x>', ratio: 0.95, limit: 0.9, verdict: 'over' }],
    }),
  }),
);
const corpus = inventedCorpus(sheets, { partFacts: [facts] });

test.each([
  ['makers', plannedMakerPages(corpus)],
  ['parts', plannedPartPages(corpus)],
  ['topologies', plannedTopologyPages(corpus)],
  ['data', [dataPage({ ...corpus, manifest: { ...corpus.manifest, site: { ...corpus.manifest.site, licence: '<x>' } } })]],
])('what an author wrote is text on the pages of %s, and never markup', (_, pages) => {
  for (const page of pages) {
    const { html } = page.draw();
    expect(html).not.toMatch(/<x/i);
    expect(html).toMatch(/&lt;x&gt;/i);
  }
});
