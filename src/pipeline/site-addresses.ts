import type { SiteAddresses } from '../pages/site-addresses.ts';

/**
 * Addresses of a site.
 *
 * @param base base path with slashes at both ends
 * @param address absolute address of the published site, null while unknown
 */
export function siteAddresses(base: string, address: string | null): SiteAddresses {
  const href = (rooted: string): string => (rooted.startsWith('/') && !rooted.startsWith('//') ? base + rooted.slice(1) : rooted);
  return {
    href,
    whole: (rooted) => (address === null ? null : new URL(href(rooted), address).href),
    host: address === null ? null : new URL(address).hostname,
  };
}
