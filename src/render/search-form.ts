import { escapeText } from '../figures/markup.ts';

/** Search field as a plain form: it works from every page, and without a script it at least keeps what was typed. */
export function searchForm(typed: string): string {
  return `<form class="search-form" role="search" action="/search/" method="get"><label><span class="vh">Search</span><input type="search" name="q" value="${escapeText(typed)}" placeholder="part, marking, 20V 5A, 4k7" autocomplete="off" spellcheck="false"></label><button type="submit">Search</button></form>`;
}
