/** Most rows that one page lists. */
export const ROWS_A_PAGE = 200;

/** One page of a long list. `page` counts from 1. */
export interface ListPage<T> {
  readonly page: number;
  readonly pages: number;
  readonly rows: readonly T[];
  /** Place of the first row in the whole list, from 1; 0 in an empty list. */
  readonly first: number;
  readonly total: number;
}

/** Cuts a list into pages of at most `size` rows; an empty list has one empty page. */
export function pagesOf<T>(rows: readonly T[], size: number = ROWS_A_PAGE): readonly ListPage<T>[] {
  const pages = Math.max(1, Math.ceil(rows.length / size));
  return Array.from({ length: pages }, (_, index) => ({
    page: index + 1,
    pages,
    rows: rows.slice(index * size, (index + 1) * size),
    first: rows.length === 0 ? 0 : index * size + 1,
    total: rows.length,
  }));
}
