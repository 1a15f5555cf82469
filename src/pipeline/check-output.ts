import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { byText } from './text-order.ts';

/** One thing wrong in the finished site. */
export interface OutputFault {
  /** Page from the output folder, forward slashes. */
  readonly page: string;
  readonly message: string;
}

interface Page {
  readonly page: string;
  readonly ids: ReadonlySet<string>;
  readonly faults: readonly string[];
  readonly links: readonly string[];
}

/**
 * Reads every page of a finished site: links and fragments must lead somewhere, ids stand once, nothing lies outside the
 * base path, and every sheet has its page with a body.
 *
 * @param base base path with slashes at both ends
 */
export function checkOutput(folder: string, base: string, slugs: readonly string[]): OutputFault[] {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((each) => each.isFile())
    .map((each) => relative(folder, join(each.parentPath, each.name)).split(sep).join('/'))
    .sort(byText);
  const present = new Set(files);
  const pages = new Map(
    files.filter((file) => file.endsWith('.html')).map((file) => [file, readPage(file, readFileSync(join(folder, file), 'utf8'))]),
  );
  OWN_TEXTS.clear();
  const faults: OutputFault[] = [];
  for (const page of pages.values()) {
    for (const message of page.faults) faults.push({ page: page.page, message });
    for (const link of new Set(page.links)) {
      const fault = faultOf(link, page, base, present, pages);
      if (fault !== null) faults.push({ page: page.page, message: fault });
    }
  }
  for (const slug of slugs) {
    if (!pages.has(`teardowns/${slug}/index.html`))
      faults.push({ page: `teardowns/${slug}/index.html`, message: 'This teardown has no page' });
  }
  return faults;
}

// Tags of our own pages: values in quotes or bare; what stands in a comment, a script or a style is cut out before.
const NO_MARKUP = /<!--[\s\S]*?-->|<(script|style)\b([^>]*)>[\s\S]*?<\/\1>/gi;
const TAG = /<[a-zA-Z](?:[^"'>]+|"[^"]*"|'[^']*')*>/g;
const NAMES_A_PLACE = /\s(?:id|href|src)/i;
const ATTRIBUTE = /\s(id|href|src|srcset)\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'>]+))/gi;

// A piece of a page keeps the whole page in memory, and a site's pages name the same ids and links over and over: each is kept once, on its own.
const OWN_TEXTS = new Map<string, string>();

function ownText(text: string): string {
  const known = OWN_TEXTS.get(text);
  if (known !== undefined) return known;
  const own = Buffer.from(text, 'utf8').toString('utf8');
  OWN_TEXTS.set(own, own);
  return own;
}

function readPage(page: string, html: string): Page {
  const markup = html.replace(NO_MARKUP, (_, name: string | undefined, attributes: string | undefined) =>
    name === undefined ? '' : `<${name}${attributes ?? ''}></${name}>`,
  );
  const ids = new Set<string>();
  const faults: string[] = [];
  const links: string[] = [];
  for (const [tag] of markup.matchAll(TAG)) {
    if (!NAMES_A_PLACE.test(tag)) continue;
    for (const [, name = '', double, single, bare] of tag.matchAll(ATTRIBUTE)) {
      const value = ownText(plainText(double ?? single ?? bare ?? ''));
      if (name.toLowerCase() !== 'id')
        links.push(...(name.toLowerCase() === 'srcset' ? value.split(',').map((each) => each.trim().split(/\s/)[0] ?? '') : [value]));
      else if (ids.has(value)) faults.push(`The id "${value}" stands twice`);
      else ids.add(value);
    }
  }
  const isRedirect = /<meta[^>]+http-equiv=["']?refresh/i.test(markup);
  if (!isRedirect && !hasWords(markup)) faults.push('The page has no body');
  return { page, ids, faults, links };
}

/** Whether anything stands between the tags of the body. */
function hasWords(markup: string): boolean {
  const start = /<body[^>]*>/i.exec(markup);
  const end = markup.lastIndexOf('</body>');
  return start !== null && end !== -1 && />[^<]*[^<\s]/.test(markup.slice(start.index, end));
}

/** Null for a link that leads somewhere or to another host. */
function faultOf(link: string, page: Page, base: string, present: ReadonlySet<string>, pages: ReadonlyMap<string, Page>): string | null {
  if (link === '' || link === '#' || link === '#top') return null;
  if (/^(?:https?:|mailto:|tel:)/i.test(link)) return null;
  if (/^(?:[a-z][a-z0-9+.-]*:|\/\/)/i.test(link))
    return /^data:image\/svg\+xml[,;]/i.test(link) ? null : `The link "${link.slice(0, 80)}" has a scheme that pages do not use`;
  const address = new URL(link, `https://site.invalid${base}${page.page.replace(/(?:^|(?<=\/))index\.html$/, '')}`);
  if (!address.pathname.startsWith(base)) return `The link "${link}" lies outside the base path ${base}`;
  const path = decodeAddress(address.pathname.slice(base.length));
  const target = [path, `${path}index.html`, `${path}/index.html`, `${path}.html`].find(
    (file) => present.has(file) && (file !== path || path !== ''),
  );
  if (target === undefined) return `The link "${link}" leads nowhere`;
  const fragment = decodeAddress(address.hash.slice(1));
  const ids = pages.get(target)?.ids;
  if (fragment === '' || ids === undefined || ids.has(fragment)) return null;
  return `The link "${link}" names a place that the page does not have`;
}

function decodeAddress(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

const NAMED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

function plainText(value: string): string {
  return value.replace(
    /&(?:#x([0-9a-f]+)|#(\d+)|(amp|lt|gt|quot|apos));/gi,
    (whole: string, hex?: string, decimal?: string, name?: string) => {
      if (name !== undefined) return NAMED[name.toLowerCase()] ?? whole;
      return String.fromCodePoint(hex === undefined ? Number(decimal) : Number.parseInt(hex, 16));
    },
  );
}
