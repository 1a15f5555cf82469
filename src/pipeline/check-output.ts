import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { decodedAddress, pageFacts, type PageFacts } from './built-site/page-facts.ts';
import { byText } from './text-order.ts';

/** One thing wrong in the finished site. */
export interface OutputFault {
  /** Page from the output folder, forward slashes. */
  readonly page: string;
  readonly message: string;
}

/**
 * Looks over every page of a finished site: links and fragments must lead somewhere, ids stand once, nothing lies outside the
 * base path, and every sheet has its page with a body.
 *
 * @param base base path with slashes at both ends
 * @param known facts of pages that were read already, by path; the others are read
 */
export function checkOutput(
  folder: string,
  base: string,
  slugs: readonly string[],
  known: ReadonlyMap<string, PageFacts> = new Map(),
): OutputFault[] {
  const files = filesOf(folder);
  const pages = new Map(
    files
      .filter((file) => file.endsWith('.html'))
      .map((file) => [file, known.get(file) ?? pageFacts(readFileSync(join(folder, file), 'utf8'))]),
  );
  const site: LinkedSite = { base, present: new Set(files), pages, verdicts: new Map() };
  const faults: OutputFault[] = [];
  for (const [page, facts] of pages) {
    for (const message of [...facts.faults, ...linkFaults(page, facts, site)]) faults.push({ page, message });
  }
  for (const slug of slugs) {
    if (!pages.has(`teardowns/${slug}/index.html`))
      faults.push({ page: `teardowns/${slug}/index.html`, message: 'This teardown has no page' });
  }
  return faults;
}

function filesOf(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .map((each) => relative(folder, join(each.parentPath, each.name)).split(sep).join('/'))
    .sort(byText);
}

interface LinkedSite {
  readonly base: string;
  readonly present: ReadonlySet<string>;
  readonly pages: ReadonlyMap<string, PageFacts>;
  /** What was found of rooted links, which mean the same on every page. */
  readonly verdicts: Map<string, string | null>;
}

function linkFaults(page: string, { links }: PageFacts, site: LinkedSite): readonly string[] {
  if (links === '') return [];
  const { verdicts } = site;
  return links.split('\n').flatMap((link) => {
    const isRooted = link.startsWith('/');
    const held = isRooted ? verdicts.get(link) : undefined;
    const fault = held === undefined ? faultOf(link, page, site) : held;
    if (isRooted && held === undefined) verdicts.set(link, fault);
    return fault === null ? [] : [fault];
  });
}

/** Null for a link that leads somewhere or to another host. */
function faultOf(link: string, page: string, { base, present, pages }: LinkedSite): string | null {
  if (link === '') return null;
  if (/^(?:https?:|mailto:|tel:)/i.test(link)) return null;
  if (/^(?:[a-z][a-z0-9+.-]*:|\/\/)/i.test(link))
    return /^data:image\/svg\+xml[,;]/i.test(link) ? null : `The link "${link.slice(0, 80)}" has a scheme that pages do not use`;
  const address = new URL(link, `https://site.invalid${base}${page.replace(/(?:^|(?<=\/))index\.html$/, '')}`);
  if (!address.pathname.startsWith(base)) return `The link "${link}" lies outside the base path ${base}`;
  const path = decodedAddress(address.pathname.slice(base.length));
  const target = [path, `${path}index.html`, `${path}/index.html`, `${path}.html`].find(
    (file) => present.has(file) && (file !== path || path !== ''),
  );
  if (target === undefined) return `The link "${link}" leads nowhere`;
  const fragment = decodedAddress(address.hash.slice(1));
  const ids = pages.get(target)?.ids;
  if (fragment === '' || ids === undefined || ids.includes(` ${fragment} `)) return null;
  return `The link "${link}" names a place that the page does not have`;
}
