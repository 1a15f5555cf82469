import { pageAddress } from '../corpus/address.ts';
import { newestFirst } from '../corpus/newest-first.ts';
import { pagesOf } from '../corpus/pages-of.ts';
import { registerZones } from '../render/register.ts';
import type { SiteCorpus } from './site-corpus.ts';
import type { PlannedPage } from './site-page.ts';

const addressOf = (page: number): string => (page === 1 ? '/' : `/${pageAddress(page)}/`);

/** The register, newest first: home, and further pages of long lists. */
export function registerPages({ manifest }: SiteCorpus): readonly PlannedPage[] {
  const sheets = [...manifest.sheets].sort(newestFirst);
  const pages = pagesOf(sheets);
  return pages.map(({ page, rows }) => ({
    path: addressOf(page),
    follows: [manifest.digest, manifest.broken, page],
    draw: () => ({
      frame: 'register',
      head: {
        title: page === 1 ? manifest.site.name : `Register, page ${String(page)}`,
        description: manifest.site.description,
        current: 'Register',
        canonical: addressOf(page),
        glyphs: rows.flatMap((sheet) => sheet.glyphs),
      },
      html: registerZones({ ...manifest, sheets }, { page, pages: pages.length, sheets: rows, addressOf }),
    }),
  }));
}
