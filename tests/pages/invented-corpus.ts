import type { CorpusSheet } from '../../src/corpus/corpus-sheet.ts';
import type { Manifest, SheetSummary } from '../../src/corpus/prepared.ts';
import { siteCorpus, type SiteCorpus } from '../../src/pages/site-corpus.ts';
import type { DrawnPage, PlannedPage } from '../../src/pages/site-page.ts';

/** A corpus of invented sheets; its digest stands for all of them, as the preparing step's does. */
export function inventedCorpus(sheets: readonly CorpusSheet[], given: Partial<Manifest> = {}): SiteCorpus {
  const summaries = sheets.map(summaryOf);
  const manifest: Manifest = {
    site: {
      name: 'Bench',
      author: 'Wren Halloway',
      description: 'Adapters, opened.',
      address: null,
      numberPrefix: 'B',
      licence: null,
      language: 'en',
      derating: null,
    },
    sheets: summaries,
    broken: [],
    findingsAcross: {},
    partFacts: [],
    digest: JSON.stringify(summaries),
    ...given,
  };
  return siteCorpus({ manifest, across: {}, uses: {} });
}

/** The page at an address, drawn; a test whose page is not planned fails here. */
export function drawnAt(pages: readonly PlannedPage[], path: string): DrawnPage {
  const page = pages.find((planned) => planned.path === path);
  if (page === undefined) throw new Error(`no page at ${path}; there are ${pages.map((planned) => planned.path).join(' ')}`);
  return page.draw();
}

function summaryOf(sheet: CorpusSheet): SheetSummary {
  return {
    ...sheet,
    title: `${sheet.maker} ${sheet.name}`,
    summary: null,
    kind: 'wall charger',
    status: 'published',
    hasPlanner: false,
    corrections: [],
    recall: null,
  };
}
