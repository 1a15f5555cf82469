import type { PageFacts } from './built-site/page-facts.ts';
import { byText } from './text-order.ts';

/** Addresses that one file may hold (sitemaps.org protocol 0.9). */
const MOST_ADDRESSES = 50_000;

/**
 * The map of a site (sitemaps.org protocol 0.9): every page but those that are hidden from search engines or only lead elsewhere.
 *
 * @param pages facts by path from the root of the site
 * @param base base path with slashes at both ends
 * @param address absolute address of the site
 */
export function siteMap(pages: ReadonlyMap<string, PageFacts>, base: string, address: string): string {
  const rows = [...pages]
    .filter(([, { listed }]) => listed)
    .map(([page]) => page)
    .sort(byText)
    .slice(0, MOST_ADDRESSES)
    .map((page) => new URL(`${base}${page.replace(/(^|\/)index\.html$/, '$1')}`, address).href)
    .map((href) => `<url><loc>${href.replaceAll('&', '&amp;').replaceAll("'", '&apos;')}</loc></url>\n`);
  return `<?xml version="1.0" encoding="utf-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${rows.join('')}</urlset>\n`;
}
