/** A piece of the prose as the page shows it: markup ready to print, or the place of a derived table. */
export type ProsePiece = { readonly kind: 'html'; readonly html: string } | { readonly kind: 'table'; readonly id: string };

const TABLE_PLACE = /<div data-table="([a-z0-9-]+)"><\/div>/g;

/** Cuts the prose at its tables. */
export function placeProse(html: string): ProsePiece[] {
  const pieces: ProsePiece[] = [];
  let at = 0;
  const keep = (piece: string): void => {
    if (piece.trim() !== '') pieces.push({ kind: 'html', html: piece });
  };
  for (const match of html.matchAll(TABLE_PLACE)) {
    keep(html.slice(at, match.index));
    pieces.push({ kind: 'table', id: match[1] ?? '' });
    at = match.index + match[0].length;
  }
  keep(html.slice(at));
  return pieces;
}
