import { benchPages } from './bench-pages.ts';
import { comparisonPages } from './comparison-pages.ts';
import { dataPage } from './data-page.ts';
import { finderPages } from './finder-pages.ts';
import { formerPages } from './former-pages.ts';
import { plannedMakerPages } from './maker-pages.ts';
import { plannedPartPages } from './part-pages.ts';
import { registerPages } from './register-pages.ts';
import type { SiteCorpus } from './site-corpus.ts';
import type { PlannedPage } from './site-page.ts';
import { plannedTopologyPages } from './topology-pages.ts';
import { brokenEntryPages } from './teardown-page.ts';

/**
 * Every page that follows from the sheets, but for those of the sheets themselves, which need their drawings.
 *
 * @param base base path of the site with slashes at both ends
 */
export function plannedPages(corpus: SiteCorpus, base: string): readonly PlannedPage[] {
  return [
    ...registerPages(corpus),
    ...finderPages(corpus),
    ...comparisonPages(corpus),
    ...plannedTopologyPages(corpus),
    ...plannedPartPages(corpus),
    ...plannedMakerPages(corpus),
    dataPage(corpus),
    ...benchPages(corpus),
    ...formerPages(corpus, base),
    ...brokenEntryPages(corpus.manifest),
  ];
}
