import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setImmediate as breath } from 'node:timers/promises';
import { NOTHING_BESIDE, sheetsBeside } from '../../corpus/sheet-beside.ts';
import { fillHoles } from '../../pages/frame-holes.ts';
import { framedPage, type Framing } from '../../pages/framed-page.ts';
import { pageFillings } from '../../pages/page-fillings.ts';
import { plannedPages } from '../../pages/planned-pages.ts';
import { siteCorpus, type SiteCorpus } from '../../pages/site-corpus.ts';
import { siteFiles } from '../../pages/site-files.ts';
import { FRAME_KINDS, type FrameKind } from '../../pages/site-page.ts';
import { teardownPath } from '../../pages/teardown-page.ts';
import { withBase } from '../../render/with-base.ts';
import { readPreparedCorpus } from '../prepared-corpus.ts';
import { siteAddresses } from '../site-addresses.ts';
import { digestOf } from './digest-of.ts';
import { notePage, placeFor, putCopy, putText, takenOver, type FreshSite } from './fresh-site.ts';
import { writeSheetPages, type SheetJob } from './sheet-pages.ts';
import { frameFiles, readFrame, type SiteFrames } from './site-frames.ts';

/** What pages are built from and where to. */
export interface PagesRequest {
  readonly prepared: string;
  /** Base path with slashes at both ends. */
  readonly base: string;
  readonly frames: SiteFrames;
  readonly onPage?: (done: number, total: number) => void;
}

/** Every page and every text over all sheets, put into their frames and written where the last build did not write the same. */
export async function buildPages(site: FreshSite, request: PagesRequest): Promise<void> {
  const corpus = siteCorpus(readPreparedCorpus(request.prepared));
  const framing = framingOf(corpus, request);
  const sheets = writeSheets(site, corpus, framing, request);
  putProgramPages(site, corpus, request);
  await Promise.all([sheets, putPlannedPages(site, corpus, framing, request)]);
  for (const { path, text } of siteFiles(corpus, framing.addresses)) {
    const key = digestOf([text]);
    if (!takenOver(site, path, key)) putText(site, path, key, text);
  }
}

function framingOf({ manifest }: SiteCorpus, { base, frames }: PagesRequest): Framing {
  const texts = Object.fromEntries(FRAME_KINDS.map((kind) => [kind, readFrame(frames, kind)]));
  // One for each kind, by the line above.
  return {
    frames: texts as Readonly<Record<FrameKind, string>>,
    site: manifest.site,
    base,
    addresses: siteAddresses(base, manifest.site.address),
  };
}

/** Pages of the program: as the generator made them, or with what they show of the sheets filled in. */
function putProgramPages(site: FreshSite, corpus: SiteCorpus, { base, frames }: PagesRequest): void {
  const fillings = new Map(pageFillings(corpus).map((filling) => [fileOf(filling.path), filling]));
  for (const path of frameFiles(frames)) {
    const filling = fillings.get(path);
    const key = filling === undefined ? frames.key : `${frames.key} ${digestOf(filling.follows)}`;
    if (takenOver(site, path, key)) continue;
    const from = join(frames.folder, path);
    if (!path.endsWith('.html')) putCopy(site, path, key, from);
    else {
      const places = Object.entries(filling?.fill() ?? {}).map(([name, html]) => [name, withBase(html, base)] as const);
      putText(site, path, key, fillHoles(readFileSync(from, 'utf8'), Object.fromEntries(places)));
    }
  }
}

async function putPlannedPages(site: FreshSite, corpus: SiteCorpus, framing: Framing, { base, frames }: PagesRequest): Promise<void> {
  for (const [index, page] of plannedPages(corpus, base).entries()) {
    const path = fileOf(page.path);
    const key = `${frames.key} ${digestOf(page.follows)}`;
    if (!takenOver(site, path, key)) putText(site, path, key, framedPage(page.draw(), framing));
    // The threads that write the sheets wait for orders from this one.
    if (index % 8 === 0) await breath();
  }
}

async function writeSheets(
  site: FreshSite,
  { manifest }: SiteCorpus,
  framing: Framing,
  { prepared, frames, onPage }: PagesRequest,
): Promise<void> {
  const { bySlug, devices } = sheetsBeside(manifest);
  const pages = manifest.sheets.map((summary) => {
    const beside = bySlug.get(summary.slug) ?? NOTHING_BESIDE;
    return {
      ...{ summary, beside, path: fileOf(teardownPath(summary.slug)) },
      key: `${frames.key} ${digestOf([summary.digest, beside, devices])}`,
    };
  });
  const anew = pages.filter(({ path, key }) => !takenOver(site, path, key));
  const jobs = anew.map(({ summary, beside, path }): SheetJob => ({ summary, beside, to: placeFor(site, path) }));
  const writing = { prepared, devices, site: framing.site, base: framing.base, frames: framing.frames };
  const facts = await writeSheetPages(jobs, writing, (done) => onPage?.(pages.length - jobs.length + done, pages.length));
  for (const [index, { path, key }] of anew.entries()) {
    const ofPage = facts[index];
    if (ofPage !== undefined) notePage(site, path, key, ofPage);
  }
}

/** File of a page: "/parts/x/" is `parts/x/index.html`, "/404.html" is `404.html`. */
function fileOf(path: string): string {
  return path.endsWith('/') ? `${path.slice(1)}index.html` : path.slice(1);
}
