/** Anchor of a part's row on its teardown's page. */
export function anchorOfPart(reference: string): string {
  return `part-${plain(reference)}`;
}

/** Anchor of a port on its teardown's page. */
export function anchorOfPort(port: string): string {
  return `port-${plain(port)}`;
}

function plain(name: string): string {
  return name.replace(/[^A-Za-z0-9_-]/g, '_');
}

const PAGE_IDS = new Set(['main', 'zones', 'content', 'footnote-label']);
const PAGE_FAMILIES = /^(?:part|port|stress|how|table|set|share|zone|note|correction|photo|stage|finding|answer|figure|source)-/;

/** Ids that the page of a teardown uses itself, so that a heading of the text never takes one of them. */
export function isPageId(id: string): boolean {
  return PAGE_IDS.has(id) || PAGE_FAMILIES.test(id);
}
