export { pageAddress } from '../../corpus/address.ts';
export { pagesOf, ROWS_A_PAGE, type ListPage } from '../../corpus/pages-of.ts';
