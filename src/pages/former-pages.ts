import { escapeText } from '../figures/markup.ts';
import { ZONE_END, zoneList, zoneStart } from '../render/zone.ts';
import type { SiteCorpus } from './site-corpus.ts';
import type { PlannedPage } from './site-page.ts';
import { teardownPath } from './teardown-page.ts';

const ZONE = { letter: 'A', title: null, label: 'A former address' } as const;

/** Folders only: a former address that ends in .html is a file of its own (`site-files.ts`). */
export function formerPages({ formerAddresses }: SiteCorpus, base: string): readonly PlannedPage[] {
  return formerAddresses
    .filter(({ path }) => !path.endsWith('.html'))
    .map((page) => {
      const target = teardownPath(page.slug);
      const device = escapeText(page.device);
      const shown = base.slice(0, -1) + target;
      return {
        path: `/${page.path}/`,
        follows: [page],
        draw: () => ({
          frame: 'lists',
          head: {
            title: `${page.device} has moved`,
            description: `The sheet of ${page.device} has a new address.`,
            canonical: target,
            hidden: true,
            movedTo: target,
          },
          html:
            `${zoneStart(ZONE)}<h1>This sheet has moved</h1><p class="lead under">${device} is now at <a href="${target}">${shown}</a>.</p>` +
            `${zoneList([ZONE])}${ZONE_END}`,
        }),
      };
    });
}
