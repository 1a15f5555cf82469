import { pageAddress } from '../corpus/address.ts';
import { sortRows } from '../corpus/find-sheets.ts';
import { NO_QUERY } from '../corpus/finder-query.ts';
import { pagesOf } from '../corpus/pages-of.ts';
import { finderZones } from '../render/finder-zones.ts';
import type { SiteCorpus } from './site-corpus.ts';
import type { PlannedPage } from './site-page.ts';

/** The finder: every device as a table, densest first; with its script, ranges and choices that filter it. */
export function finderPages({ finder }: SiteCorpus): readonly PlannedPage[] {
  const lists = pagesOf(sortRows(finder.rows, NO_QUERY.sort));
  return lists.map((list) => {
    const path = list.page === 1 ? '/finder/' : `/finder/${pageAddress(list.page)}/`;
    return {
      path,
      follows: [finder, list.page],
      draw: () => ({
        frame: 'finder',
        head: {
          title: list.page === 1 ? 'Finder' : `Finder, page ${String(list.page)}`,
          description: 'Devices by rated power, size, density, ports, year, price, topology and controller.',
          current: 'Finder',
          canonical: path,
        },
        html: finderZones(finder, list),
      }),
    };
  });
}
