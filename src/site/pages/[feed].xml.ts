import type { APIRoute } from 'astro';
import { newestFirst } from '../../corpus/newest-first.ts';
import { readManifest } from '../data/prepared-folder.ts';
import { href } from '../href.ts';
import { atomFeed, FEED_LENGTH } from '../../render/feed.ts';

/** A feed needs absolute addresses: there is none while the address of the site is not known. */
export function getStaticPaths(): { params: { feed: string } }[] {
  return readManifest().site.address === null ? [] : [{ params: { feed: 'feed' } }];
}

export const GET: APIRoute = () => {
  const { site, sheets } = readManifest();
  const origin = site.address ?? 'http://localhost/';
  const newest = sheets
    .filter((sheet) => sheet.status === 'published')
    .sort(newestFirst)
    .slice(0, FEED_LENGTH);
  const text = atomFeed(site, new URL(origin).hostname, newest, (path) => new URL(href(path), origin).href);
  return new Response(text, { headers: { 'content-type': 'application/atom+xml; charset=utf-8' } });
};
