/** An address as it is compared: lower case, without host and index file, with a slash at both ends. */
export function plainAddress(written: string): string {
  const path = written
    .trim()
    .toLowerCase()
    .replace(/^https?:\/\/[^/]+/, '')
    .replace(/\/index\.html$/, '/');
  return `/${path
    .split('/')
    .filter((step) => step !== '')
    .join('/')}/`.replace(/^\/\/$/, '/');
}
