/** First steps of a path under which the site has pages and files of its own. A test compares them with a built site. */
const OWN_STEPS: ReadonlySet<string> = new Set([
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
  '404.html',
  'index',
  'index.html',
  '_sheet',
  '_headers',
  'icon.svg',
  'scheme.js',
  'feed.xml',
  'sitemap.xml',
]);

/** Where the page of a former address stands, or why none can stand there. */
export type FormerAddressPath = { readonly ok: true; readonly path: string } | { readonly ok: false; readonly reason: string };

/**
 * Path from the root of the site, without slashes at its ends. "old-name", "/old-name/" and "https://former.example/old-name/index.html" are
 * one: a former host is left out, as the page stands on the present one. Queries, fragments and dot segments are refused.
 */
export function formerAddressPath(written: string): FormerAddressPath {
  const path = written
    .trim()
    .replace(/^https?:\/\/[^/]+/i, '')
    .replaceAll(/^\/+|\/+$/g, '')
    .replace(/\/index\.html$/, '');
  if (!path.split('/').every((step) => /^[A-Za-z0-9_~-][A-Za-z0-9._~-]*$/.test(step)))
    return { ok: false, reason: 'is not a path that a plain file can stand at' };
  const [first = '', second] = path.split('/');
  const isOwn = OWN_STEPS.has(first.toLowerCase()) || (first === 'teardowns' && second === undefined);
  return isOwn ? { ok: false, reason: 'is where the site has pages of its own' } : { ok: true, path };
}
