import { statSync } from 'node:fs';
import { buildPages } from './built-site/build-pages.ts';
import { freshSite, putCopy, putText, takenOver, type FreshSite } from './built-site/fresh-site.ts';
import type { PageFacts } from './built-site/page-facts.ts';
import type { PreviousOutput } from './built-site/previous-output.ts';
import { siteFrames, type SiteFrames } from './built-site/site-frames.ts';
import { openDataOfSite } from './device-files.ts';
import { readPhotoList } from './photos/photo-list.ts';
import type { Preparation } from './prepare-apart.ts';
import { drawSharingImages } from './sharing-images.ts';
import { siteMap } from './site-map.ts';

/** What the site is built from and where to. */
export interface SiteBuildRequest {
  readonly prepared: string;
  /** Empty folder to write the site into. */
  readonly folder: string;
  /** Base path with slashes at both ends. */
  readonly base: string;
  readonly cache: string;
  readonly preparation: Pick<Preparation, 'site' | 'slugs' | 'former'>;
  /** Frames that were begun before; made now where there are none. */
  readonly frames?: Promise<SiteFrames>;
  /** What the last build of the same output left. */
  readonly previous?: PreviousOutput | null;
  readonly onPage?: (done: number, total: number) => void;
}

/** A finished site that has not been looked over yet. */
export interface BuiltSite {
  readonly keys: ReadonlyMap<string, string>;
  /** What is known of its pages already. */
  readonly facts: ReadonlyMap<string, PageFacts>;
}

/** Writes the site into the requested folder. Rejects with a reason in words when it cannot. */
export type SiteBuilder = (request: SiteBuildRequest) => Promise<BuiltSite>;

/** Builds the whole site: pages in their frames, open data, pictures, the map of the site. */
export async function buildFromFrames(request: SiteBuildRequest): Promise<BuiltSite> {
  const { prepared, cache, base, preparation } = request;
  const { address } = preparation.site;
  // An image's address has to be a whole one, so there is none while that of the site is not known; drawn beside the pages otherwise.
  const images = address === null ? Promise.resolve([]) : drawSharingImages(prepared, cache);
  const frames = await (request.frames ?? siteFrames({ prepared, cache, base, site: preparation.site }));
  const site = freshSite(request.folder, request.previous ?? null);
  const { onPage } = request;
  const [drawn] = await Promise.all([images, buildPages(site, { prepared, base, frames, ...(onPage === undefined ? {} : { onPage }) })]);
  for (const { from, path } of openDataOfSite(prepared, preparation)) copyStanding(site, path, from);
  for (const { kept, path } of drawn) copyStanding(site, path, kept);
  for (const { address: path, file } of readPhotoList(prepared).pictures) copyStanding(site, path.replace(/^\/+/, ''), file);
  if (address !== null) putText(site, 'sitemap.xml', 'always', siteMap(site.facts, base, address));
  return site;
}

/** Copies a file that changes its time with its bytes, or takes it over. */
function copyStanding(site: FreshSite, path: string, from: string): void {
  const { size, mtimeMs } = statSync(from);
  const key = `${from} ${String(size)} ${String(mtimeMs)}`;
  if (!takenOver(site, path, key)) putCopy(site, path, key, from);
}
