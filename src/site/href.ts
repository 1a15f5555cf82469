import { withBase } from '../render/with-base.ts';

// Only the site generator knows the base path; to anything else that loads this file the site stands at the root.
const { BASE_URL = '/' } = (import.meta as { readonly env?: { readonly BASE_URL?: string } }).env ?? {};

/** Base path of the site with a slash at both ends: "/" or "/sub/". */
const BASE = `${BASE_URL.replace(/\/+$/, '')}/`;

/** Address inside the site with the base path before it: `href('/methods/')`. Fragments and addresses of other hosts pass unchanged. */
export function href(address: string): string {
  return address.startsWith('/') && !address.startsWith('//') ? BASE + address.slice(1) : address;
}

/** Drawn HTML, whose addresses are rooted, with the base path before them. */
export function based(html: string): string {
  return withBase(html, BASE);
}
