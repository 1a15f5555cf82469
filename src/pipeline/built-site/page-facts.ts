// What the check of a finished site needs of one page, read once while the page is at hand.

import { metadataInText } from '../photos/picture-metadata.ts';
import { toldBy } from '../photos/told-by.ts';

/** A page as the check of links knows it. */
export interface PageFacts {
  /** Ids of the page between spaces, one before and one after each: " a b ". */
  readonly ids: string;
  /** Addresses as written that lead out of the page, each once, on a line each. */
  readonly links: string;
  /** What is wrong with the page by itself. */
  readonly faults: readonly string[];
  /** Whether search engines are told of it. */
  readonly listed: boolean;
}

// Tags of our own pages: values in quotes or bare; what stands in a comment, a script or a style is cut out before.
const NO_MARKUP = /<!--[\s\S]*?-->|<(script|style)\b([^>]*)>[\s\S]*?<\/\1>/gi;
const TAG = /<[a-zA-Z](?:[^"'>]+|"[^"]*"|'[^']*')*>/g;
const NAMES_A_PLACE = /\s(?:id|href|src)/i;
const ATTRIBUTE = /\s(id|href|src|srcset)\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'>]+))/gi;

/** Bytes of a page in which its head says whether it is hidden or leads elsewhere. */
const HEAD_LENGTH = 3000;
const HIDDEN = /<meta name="?robots"? content="?noindex|http-equiv="?refresh/i;

/**
 * Reads ids and links of a page. Ids that stand twice, links to places it does not have, a body without words, and pictures in data that
 * hold metadata are its faults.
 */
export function pageFacts(html: string): PageFacts {
  const markup = html.replace(NO_MARKUP, (_, name: string | undefined, attributes: string | undefined) =>
    name === undefined ? '' : `<${name}${attributes ?? ''}></${name}>`,
  );
  const ids = new Set<string>();
  const faults: string[] = [];
  const links = new Set<string>();
  for (const [tag] of markup.matchAll(TAG)) {
    if (!NAMES_A_PLACE.test(tag)) continue;
    for (const [, name = '', double, single, bare] of tag.matchAll(ATTRIBUTE)) {
      const value = plainText(double ?? single ?? bare ?? '');
      const kind = name.toLowerCase();
      if (kind === 'srcset') for (const each of value.split(',')) links.add(each.trim().split(/\s/)[0] ?? '');
      else if (kind !== 'id') links.add(value);
      else if (ids.has(value)) faults.push(`The id "${value}" stands twice`);
      else ids.add(value);
    }
  }
  const isRedirect = /<meta[^>]+http-equiv=["']?refresh/i.test(markup);
  if (!isRedirect && !hasWords(markup)) faults.push('The page has no body');
  const told = toldBy('page', metadataInText(html));
  if (told !== null) faults.push(told);
  const outward = [...links].filter((link) => !link.startsWith('#'));
  for (const link of links) if (leadsNowhere(link, ids)) faults.push(`The link "${link}" names a place that the page does not have`);
  return { ids: ` ${[...ids].join(' ')} `, links: outward.join('\n'), faults, listed: !HIDDEN.test(html.slice(0, HEAD_LENGTH)) };
}

/** Whether a link within the page names no place of it. */
function leadsNowhere(link: string, ids: ReadonlySet<string>): boolean {
  return link.startsWith('#') && link !== '#' && link !== '#top' && !ids.has(decodedAddress(link.slice(1)));
}

/** Whether anything stands between the tags of the body. */
function hasWords(markup: string): boolean {
  const start = /<body[^>]*>/i.exec(markup);
  const end = markup.lastIndexOf('</body>');
  return start !== null && end !== -1 && />[^<]*[^<\s]/.test(markup.slice(start.index, end));
}

/** An address with its escaped characters as they are; as written where they are no escapes. */
export function decodedAddress(text: string): string {
  if (!text.includes('%')) return text;
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

const NAMED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

function plainText(value: string): string {
  if (!value.includes('&')) return value;
  return value.replace(
    /&(?:#x([0-9a-f]+)|#(\d+)|(amp|lt|gt|quot|apos));/gi,
    (whole: string, hex?: string, decimal?: string, name?: string) => {
      if (name !== undefined) return NAMED[name.toLowerCase()] ?? whole;
      return String.fromCodePoint(hex === undefined ? Number(decimal) : Number.parseInt(hex, 16));
    },
  );
}
