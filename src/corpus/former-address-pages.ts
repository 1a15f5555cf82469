import { compareText } from './compare-text.ts';
import type { CorpusSheet } from './corpus-sheet.ts';

/** A page that stands at a former address and leads to the present one. */
export interface FormerAddressPage {
  /** Path from the root of the site, without slashes at its ends: "teardowns/old-name", or a file: "2019/quadra.html". */
  readonly path: string;
  readonly slug: string;
  readonly device: string;
}

/** A former address that cannot lead anywhere, and why. */
export interface FormerAddressClash {
  readonly slug: string;
  readonly written: string;
  readonly reason: string;
}

/** First segments under which the site has pages of its own. */
const OWN_PAGES: ReadonlySet<string> = new Set([
  'topologies',
  'parts',
  'makers',
  'methods',
  'rules',
  'finder',
  'compare',
  'search',
  'data',
  'planner',
  'bench',
  'photos',
  '404',
  'index',
]);

/**
 * Redirect pages for all former addresses. An address that a present sheet uses, that two sheets claim, or that no plain
 * file can stand at, is a clash and gets no page: a link must never lead to the wrong device.
 */
export function formerAddressPages(sheets: readonly CorpusSheet[]): {
  readonly pages: readonly FormerAddressPage[];
  readonly clashes: readonly FormerAddressClash[];
} {
  const present = new Set(sheets.map((sheet) => `teardowns/${sheet.slug}`));
  const claims = new Map<string, { readonly sheet: CorpusSheet; readonly written: string }[]>();
  const clashes: FormerAddressClash[] = [];
  for (const sheet of sheets) {
    for (const written of sheet.formerAddresses) {
      const path = pathOf(written);
      if (path === null) clashes.push({ slug: sheet.slug, written, reason: 'it is not a path that a plain file can stand at' });
      else if (present.has(path)) clashes.push({ slug: sheet.slug, written, reason: 'a present sheet uses this address' });
      else if (OWN_PAGES.has(path.split('/')[0] ?? ''))
        clashes.push({ slug: sheet.slug, written, reason: 'the site has pages of its own there' });
      else claims.set(path, [...(claims.get(path) ?? []), { sheet, written }]);
    }
  }
  const pages: FormerAddressPage[] = [];
  for (const [path, claimants] of claims) {
    const slugs = new Set(claimants.map((claim) => claim.sheet.slug));
    const [first] = claimants;
    if (first === undefined) continue;
    if (slugs.size === 1) pages.push({ path, slug: first.sheet.slug, device: `${first.sheet.maker} ${first.sheet.name}` });
    else
      for (const { sheet, written } of claimants)
        clashes.push({ slug: sheet.slug, written, reason: `${String(slugs.size)} sheets claim it` });
  }
  return {
    pages: pages.sort((one, other) => compareText(one.path, other.path)),
    clashes: clashes.sort((one, other) => compareText(one.slug, other.slug) || compareText(one.written, other.written)),
  };
}

/**
 * "old-name", "/old-name/" and "https://former.example/old-name/index.html" are one address: a former host is left out, as the page stands on
 * the present one. Queries, fragments and dot segments are refused.
 */
function pathOf(written: string): string | null {
  const path = written
    .trim()
    .replace(/^https?:\/\/[^/]+/i, '')
    .replaceAll(/^\/+|\/+$/g, '')
    .replace(/\/index\.html$/, '');
  const plain = path.split('/').every((segment) => /^[A-Za-z0-9_~-][A-Za-z0-9._~-]*$/.test(segment));
  return plain ? path : null;
}
