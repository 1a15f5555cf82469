import { escapeText } from '../figures/markup.ts';

/** Head of a column: its words, or its words and class; class "n" sets numbers to the right. */
export type StackHead = string | readonly [words: string, className: string];

/**
 * A table whose rows become blocks on a phone. Each cell but the row's own head names its column in `data-head`.
 *
 * @param body Markup of what follows the head: `<tbody>` and what else there is.
 */
export function stackTable(heads: readonly StackHead[], body: string, className = 'stack'): string {
  const cells = heads.map((head) =>
    typeof head === 'string'
      ? `<th scope="col">${escapeText(head)}</th>`
      : `<th scope="col" class="${head[1]}">${escapeText(head[0])}</th>`,
  );
  return `<table class="${className}"><thead><tr>${cells.join('')}</tr></thead>${body}</table>`;
}

/** A cell with its column's head for the phone. `html` is markup, escaped by the caller. */
export function stackCell(head: string, html: string | number, className?: string): string {
  return `<td${className === undefined ? '' : ` class="${className}"`} data-head="${escapeText(head)}">${html}</td>`;
}
