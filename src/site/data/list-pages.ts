export { pageAddress } from '../../corpus/address.ts';
export { pagesOf, type ListPage } from '../../corpus/pages-of.ts';
