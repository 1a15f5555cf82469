import { closeSync, openSync, readdirSync, readSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { byText } from './text-order.ts';

/** Bytes of a page in which its head says whether it is hidden or leads elsewhere. */
const HEAD_BYTES = 3000;
/** Addresses that one file may hold (sitemaps.org protocol 0.9). */
const MOST_ADDRESSES = 50_000;

/**
 * Writes `sitemap.xml` (sitemaps.org protocol 0.9) into a finished site: every page but those that are hidden from search
 * engines or only lead elsewhere. Nothing is written while the address of the site is not known.
 *
 * @param base base path with slashes at both ends
 */
export function writeSiteMap(folder: string, base: string, address: string | null): void {
  if (address === null) return;
  const pages = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((file) => file.isFile() && file.name.endsWith('.html'))
    .map((file) => join(file.parentPath, file.name))
    .filter((path) => isListed(path))
    .map((path) => relative(folder, path).split(sep).join('/'))
    .sort(byText)
    .slice(0, MOST_ADDRESSES)
    .map((page) => new URL(`${base}${page.replace(/(^|\/)index\.html$/, '$1')}`, address).href);
  const rows = pages.map((page) => `<url><loc>${page.replaceAll('&', '&amp;').replaceAll("'", '&apos;')}</loc></url>\n`);
  writeFileSync(
    join(folder, 'sitemap.xml'),
    `<?xml version="1.0" encoding="utf-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${rows.join('')}</urlset>\n`,
  );
}

function isListed(path: string): boolean {
  const head = Buffer.alloc(HEAD_BYTES);
  const file = openSync(path, 'r');
  const length = readSync(file, head, 0, HEAD_BYTES, 0);
  closeSync(file);
  return !/<meta name="?robots"? content="?noindex|http-equiv="?refresh/i.test(head.toString('utf8', 0, length));
}
