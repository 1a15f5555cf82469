import remarkDirective from 'remark-directive';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import rehypeRaw from 'rehype-raw';
import rehypeSanitize from 'rehype-sanitize';
import rehypeStringify from 'rehype-stringify';
import { unified } from 'unified';
import type { Root as Markup } from 'hast';
import type { Root as Text } from 'mdast';
import { ALLOWED_HTML } from './allowed-html.ts';
import { quickParse } from './quick-parse.ts';

// One tilde is a range or a wave sign in this trade ("100~240V~"), so only two strike text through; punctuation stays as typed.
const reader = unified().use(remarkParse).use(remarkGfm, { singleTilde: false }).use(remarkDirective).freeze();
const translator = unified()
  .use(remarkRehype, { allowDangerousHtml: true, clobberPrefix: 'note-', footnoteLabelProperties: { className: ['footnotes-title'] } })
  .freeze();
const nester = unified().use(rehypeRaw).freeze();
const sanitiser = unified().use(rehypeSanitize, ALLOWED_HTML).freeze();
const writer = unified().use(rehypeStringify).freeze();

/** Markdown to its syntax tree; offsets count from the start of `text`. */
export function parseMarkdown(text: string): Text {
  return quickParse(text, (whole) => reader.parse(whole));
}

/** Markdown tree to HTML tree; the author's HTML is still in it as raw text. */
export function toMarkup(tree: Text): Markup {
  return translator.runSync(tree);
}

/** Parses the raw HTML in the tree as a browser would. */
export function nestRawHtml(tree: Markup, text: string): Markup {
  return nester.runSync(tree, text);
}

/** Leaves only what ALLOWED_HTML lists. */
export function sanitise(tree: Markup): Markup {
  return sanitiser.runSync(tree);
}

/** HTML tree to HTML. */
export function toHtml(tree: Markup): string {
  return writer.stringify(tree);
}
