import type { Root, RootContent } from 'hast';
import { stretchOf, type Stretch } from './prose-finding.ts';
import { walk } from './walk.ts';

/** A link of the text to a page of this site, resolved: `/teardowns/lm-q100/`, without the base path. */
export interface ProseLink {
  readonly path: string;
  /** Without the number sign; empty where the link names none. */
  readonly fragment: string;
  readonly written: string;
  readonly stretch: Stretch;
}

// Any absolute address does for resolving; this one can never be asked for anything (RFC 2606, section 2).
const ANYWHERE = 'https://site.invalid';

/** Resolves the site's own links against the entry's address, writes them back rooted, and returns them for checking. */
export function settleLinks(tree: Root, slug: string): ProseLink[] {
  const links: ProseLink[] = [];
  walk<RootContent>(tree, (node) => {
    const written = node.type === 'element' && node.tagName === 'a' ? node.properties['href'] : undefined;
    if (node.type !== 'element' || typeof written !== 'string' || isElsewhere(written) || written.startsWith('#')) return undefined;
    const resolved = resolve(written, slug);
    node.properties['href'] = resolved.path + (resolved.fragment === '' ? '' : `#${resolved.fragment}`);
    links.push({ ...resolved, written, stretch: stretchOf(node) });
    return undefined;
  });
  return links;
}

function isElsewhere(address: string): boolean {
  return /^(?:[a-z][a-z0-9+.-]*:|\/\/)/i.test(address);
}

function resolve(written: string, slug: string): { readonly path: string; readonly fragment: string } {
  const base = `${ANYWHERE}/teardowns/${slug}/`;
  if (!URL.canParse(written, base)) return { path: written, fragment: '' };
  const address = new URL(written, base);
  const folder = address.pathname.replace(/\/index\.(?:md|html)$/, '/');
  const isFile = /\.[a-z0-9]+$/i.test(folder);
  return { path: isFile || folder.endsWith('/') ? folder : `${folder}/`, fragment: address.hash.slice(1) };
}
