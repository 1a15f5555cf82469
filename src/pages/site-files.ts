import type { FormerAddressPage } from '../corpus/former-address-pages.ts';
import { newestFirst } from '../corpus/newest-first.ts';
import { packFinder } from '../corpus/pack-finder.ts';
import type { SiteSettings } from '../corpus/prepared.ts';
import { escapeText } from '../figures/markup.ts';
import { atomFeed, FEED_LENGTH } from '../render/feed.ts';
import type { SiteAddresses } from './site-addresses.ts';
import type { SiteCorpus } from './site-corpus.ts';
import { siteSearch } from './site-search.ts';
import { teardownPath } from './teardown-page.ts';

/** A file over all sheets that is no framed page. */
export interface SiteFile {
  /** From the root of the site, without a slash before it. */
  readonly path: string;
  readonly text: string;
}

/** The files over all sheets: the finder's rows, the pieces of the search index, the feed, and former addresses that name a file. */
export function siteFiles(corpus: SiteCorpus, addresses: SiteAddresses): readonly SiteFile[] {
  return [
    { path: 'finder/rows.json', text: JSON.stringify(packFinder(corpus.finder)) },
    ...searchFiles(corpus),
    ...feedFile(corpus, addresses),
    ...corpus.formerAddresses
      .filter(({ path }) => path.endsWith('.html'))
      .map((page) => ({ path: page.path, text: formerFile(page, corpus.manifest.site, addresses) })),
  ];
}

function searchFiles(corpus: SiteCorpus): readonly SiteFile[] {
  const { start, shards, chunks } = siteSearch(corpus);
  return [
    { path: 'search/start.json', text: JSON.stringify(start) },
    ...start.shards.map((name) => ({ path: `search/shard/${name}.json`, text: JSON.stringify(shards.get(name) ?? {}) })),
    ...chunks.map((chunk, index) => ({ path: `search/found/${String(index)}.json`, text: JSON.stringify(chunk) })),
  ];
}

/** A feed needs absolute addresses: there is none while the address of the site is not known. */
function feedFile({ manifest: { site, sheets } }: SiteCorpus, { whole, host }: SiteAddresses): readonly SiteFile[] {
  if (host === null) return [];
  const newest = sheets
    .filter((sheet) => sheet.status === 'published')
    .sort(newestFirst)
    .slice(0, FEED_LENGTH);
  return [{ path: 'feed.xml', text: atomFeed(site, host, newest, (path) => whole(path) ?? path) }];
}

/** A page without style: it is gone before it is read, and its one link works in any browser. */
function formerFile(page: FormerAddressPage, site: SiteSettings, { href, whole }: SiteAddresses): string {
  const target = href(teardownPath(page.slug));
  const canonical = whole(teardownPath(page.slug)) ?? target;
  const device = escapeText(page.device);
  return (
    `<!doctype html>\n<html lang="${escapeText(site.language)}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">` +
    `<title>${device} has moved</title><meta name="robots" content="noindex"><link rel="canonical" href="${escapeText(canonical)}">` +
    `<meta http-equiv="refresh" content="0; url=${escapeText(target)}"></head>` +
    `<body><main><h1>This sheet has moved</h1><p>${device} is now at <a href="${escapeText(target)}">${escapeText(target)}</a>.</p></main></body></html>\n`
  );
}
