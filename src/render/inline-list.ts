import { escapeText } from '../figures/markup.ts';
import type { Source } from '../values/value.ts';
import { standingWords } from './standing-words.ts';
import { sentence } from './words.ts';

/** Links in a sentence, set apart by commas. As text, because a template would put a space before each comma. */
export function linkList(links: readonly { readonly address: string; readonly words: string }[], className?: string): string {
  const attribute = className === undefined ? '' : ` class="${className}"`;
  return links.map(({ address, words }) => `<a${attribute} href="${address}">${escapeText(words)}</a>`).join(', ');
}

/** A source with its clause and its standing in words; a link to it leads away, and only the reader follows it. */
export function sourceLine(source: Source): string {
  const title = sentence(source.title);
  const linked = source.url === undefined ? title : `<a href="${escapeText(source.url)}" rel="noreferrer">${title}</a>`;
  const words = standingWords(source);
  return `${linked}${source.section === '' ? '' : `, ${sentence(source.section)}`}${words === null ? '' : `<span class="soft"> (${words})</span>`}`;
}
