import { counted } from '../units/counted.ts';
import { dataZones } from '../render/data-zones.ts';
import type { SiteCorpus } from './site-corpus.ts';
import type { PlannedPage } from './site-page.ts';

/** The page that says which files of data the site has. */
export function dataPage({ manifest: { site, sheets } }: SiteCorpus): PlannedPage {
  return {
    path: '/data/',
    follows: [sheets.length, site.licence],
    draw: () => ({
      frame: 'lists',
      head: {
        title: 'Data',
        description: `${counted(sheets.length, 'teardown')} as data: devices, parts and every computed number with its evidence.`,
        canonical: '/data/',
      },
      html: dataZones(sheets.length, site.licence),
    }),
  };
}
