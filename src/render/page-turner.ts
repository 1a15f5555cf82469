import { formatNumber } from '../units/format-number.ts';
import { pageAddress } from '../corpus/address.ts';
import type { ListPage } from '../corpus/pages-of.ts';

/**
 * Words and links under a list that goes on over several pages; nothing where one page holds it.
 *
 * @param base Address of the first page, with slashes at both ends.
 */
export function pageTurner(list: ListPage<unknown>, base: string): string {
  if (list.pages < 2) return '';
  const near = Array.from({ length: list.pages }, (_, index) => index + 1).filter(
    (page) => page === 1 || page === list.pages || Math.abs(page - list.page) <= 2,
  );
  const items = near.map((page, index) => {
    const skips = index > 0 && page - (near[index - 1] ?? page) > 1;
    return `<li${skips ? ' class="gap"' : ''}>${page === list.page ? `<b aria-current="page">${formatNumber(page, 0)}</b>` : `<a href="${page === 1 ? base : `${base}${pageAddress(page)}/`}">${formatNumber(page, 0)}</a>`}</li>`;
  });
  const rows = `<span class="q">${formatNumber(list.first, 0)} to ${formatNumber(list.first + list.rows.length - 1, 0)}</span> of <span class="q">${formatNumber(list.total, 0)}</span>`;
  return `<nav class="turner" aria-label="Pages of this list"><p class="note">Rows ${rows}</p><ul>${items.join('')}</ul></nav>`;
}
