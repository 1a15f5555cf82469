/** Base path of the site with a slash at both ends: "/" or "/sub/". */
const BASE = `${import.meta.env.BASE_URL.replace(/\/+$/, '')}/`;

/** Address inside the site with the base path before it: `href('/methods/')`. Fragments and addresses of other hosts pass unchanged. */
export function href(address: string): string {
  return address.startsWith('/') && !address.startsWith('//') ? BASE + address.slice(1) : address;
}

/** The same for every link and picture in ready HTML, whose addresses come without the base path. */
export function withBase(html: string): string {
  return BASE === '/' ? html : html.replace(/(\s(?:href|src)=")\/(?!\/)/g, `$1${BASE}`);
}
