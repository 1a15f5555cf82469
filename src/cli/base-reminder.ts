/**
 * What to say when the site's address in its settings and the base path of a build do not agree: feed, site map and
 * canonical addresses would name pages that are not there. Null where they agree or no address is known.
 */
export function baseReminder(address: string | null, base: string): string | null {
  if (address === null) return null;
  const path = `${new URL(address).pathname.replace(/\/+$/, '')}/`;
  if (path === base) return null;
  return `site.yaml says that the site stands at ${address}, but it was built for ${base}; build with --base ${path}, or correct the address.`;
}
