/** A piece of the prose as the page shows it: markup ready to print, or the place of a derived table. */
export type ProsePiece = { readonly kind: 'html'; readonly html: string } | { readonly kind: 'table'; readonly id: string };

// The HTML is our own writer's: attribute values stand in double quotes, and `<` never stands in text. So a tag is read exactly.
const TAG = /<[a-z][a-z0-9]*(?:\s+[^\s=>"]+(?:="[^"]*")?)*\s*>/g;
const TABLE_PLACE = /<div data-table="([a-z0-9-]+)"><\/div>/g;

/** Cuts the prose at its tables and puts the base path (`/` or `/sub/`) before the site's own links. */
export function placeProse(html: string, base: string): ProsePiece[] {
  const pieces: ProsePiece[] = [];
  let at = 0;
  const keep = (piece: string): void => {
    if (piece.trim() !== '') pieces.push({ kind: 'html', html: withBase(piece, base) });
  };
  for (const match of html.matchAll(TABLE_PLACE)) {
    keep(html.slice(at, match.index));
    pieces.push({ kind: 'table', id: match[1] ?? '' });
    at = match.index + match[0].length;
  }
  keep(html.slice(at));
  return pieces;
}

/** Puts the base path before every rooted link of our own HTML. */
function withBase(html: string, base: string): string {
  const root = base.endsWith('/') ? base : `${base}/`;
  return root === '/' ? html : html.replace(TAG, (tag) => tag.replace(/(\shref=")\/(?!\/)/, `$1${root}`));
}
