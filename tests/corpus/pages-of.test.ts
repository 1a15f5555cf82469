import fc from 'fast-check';
import { expect, it } from 'vitest';
import { pagesOf, ROWS_A_PAGE } from '../../src/corpus/pages-of.ts';

it('no page lists more than 200 rows, and the pages together are the list', () => {
  fc.assert(
    fc.property(fc.array(fc.integer(), { maxLength: 1000 }), (rows) => {
      const pages = pagesOf(rows);
      expect(pages.flatMap((page) => page.rows)).toEqual(rows);
      for (const page of pages) expect(page.rows.length).toBeLessThanOrEqual(ROWS_A_PAGE);
      expect(pages.map((page) => page.page)).toEqual(pages.map((_, index) => index + 1));
    }),
    { seed: 7, numRuns: 200 },
  );
});

it('200 rows stand on one page, 201 on two', () => {
  expect(pagesOf(Array.from({ length: 200 }, (_, index) => index))).toHaveLength(1);
  const [, second] = pagesOf(Array.from({ length: 201 }, (_, index) => index));
  expect(second).toMatchObject({ page: 2, pages: 2, first: 201, total: 201, rows: [200] });
});

it('an empty list has one page that says so', () => {
  expect(pagesOf([])).toEqual([{ page: 1, pages: 1, rows: [], first: 0, total: 0 }]);
});
