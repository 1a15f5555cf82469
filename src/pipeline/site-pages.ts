import { didYouMean } from '../markdown/nearest-name.ts';

/** Addresses of pages that the site has, without the base path, as far as they follow from the content. */
export interface SitePages {
  readonly published: ReadonlySet<string>;
  readonly drafts: ReadonlySet<string>;
  readonly methods: ReadonlySet<string>;
  readonly rules: ReadonlySet<string>;
}

// Pages under these follow from parts, makers and stages; the check of the finished site sees to them.
const FOUND_LATER = new Set([
  'parts',
  'makers',
  'topologies',
  'families',
  'topology',
  'data',
  'planner',
  'finder',
  'compare',
  'search',
  'bench',
]);

/** What is wrong with a link to a page of the site: null, or the rule and what to say. */
export function faultOfLink(
  path: string,
  pages: SitePages,
): { readonly rule: 'prose-link-broken' | 'prose-link-draft'; readonly message: string } | null {
  const [section = '', name = '', ...rest] = decoded(path)
    .split('/')
    .filter((step) => step !== '');
  if (section === '' || FOUND_LATER.has(section)) return null;
  if (section === 'teardowns' && name !== '' && pages.drafts.has(name))
    return { rule: 'prose-link-draft', message: `The link leads to the draft ${name}` };
  const names =
    section === 'teardowns' ? pages.published : section === 'methods' ? pages.methods : section === 'rules' ? pages.rules : null;
  if (names === null) return broken(`${path}: the site has no such section`);
  if (rest.length > 0) return broken(`${path}: nothing lies under a ${section.replace(/s$/, '')}; files beside an entry are not published`);
  if (name === '' || names.has(name)) return null;
  return broken(`${path}: there is no ${section.replace(/s$/, '')} "${name}"${didYouMean(name, names)}`);
}

function broken(what: string): { readonly rule: 'prose-link-broken'; readonly message: string } {
  return { rule: 'prose-link-broken', message: `The link leads nowhere, ${what}` };
}

function decoded(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}
