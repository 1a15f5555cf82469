import { createHash } from 'node:crypto';
import type { ElementContent, Element, Root, RootContent } from 'hast';
import { inlineText } from './inline-text.ts';
import { walk } from './walk.ts';

/**
 * Places in the text that our own markup fills after the author's HTML has been sanitised. In between, a place is a word
 * that no author can have written: it contains a hash of the very text it stands in.
 */
export interface Slots {
  /** Keeps the markup and returns the word that stands for it. */
  readonly keep: (markup: ElementContent, level: 'inline' | 'block') => string;
  /** Puts the kept markup where its words stand. */
  readonly fill: (tree: Root) => void;
}

/** Slots for one text. */
export function slotsFor(text: string): Slots {
  const seal = createHash('sha256').update(text).digest('hex').slice(0, 24);
  const kept: { readonly markup: ElementContent; readonly level: 'inline' | 'block' }[] = [];
  const word = new RegExp(`\uE000${seal}-(\\d+)\uE001`, 'g');
  return {
    keep(markup, level) {
      kept.push({ markup, level });
      return `\uE000${seal}-${String(kept.length - 1)}\uE001`;
    },
    fill(tree) {
      if (kept.length === 0) return;
      walk<RootContent>(tree, (node, index, parent) => {
        const block = node.type === 'element' ? kept[slotOfParagraph(node, word) ?? -1] : undefined;
        if (block?.level === 'block') {
          parent.children[index] = block.markup;
          return index + 1;
        }
        if (node.type !== 'text' || !node.value.includes(seal)) return undefined;
        const pieces = splitAtWords(node.value, word, (at) => kept[at]?.markup);
        parent.children.splice(index, 1, ...pieces);
        return index + pieces.length;
      });
    },
  };
}

/** Number of the slot when a paragraph holds one and nothing else. */
function slotOfParagraph(node: Element, word: RegExp): number | null {
  if (node.tagName !== 'p' || node.children.length !== 1) return null;
  const text = inlineText(node);
  word.lastIndex = 0;
  const match = word.exec(text);
  word.lastIndex = 0;
  return match !== null && match[0] === text.trim() ? Number(match[1]) : null;
}

function splitAtWords(text: string, word: RegExp, markupOf: (slot: number) => ElementContent | undefined): ElementContent[] {
  const pieces: ElementContent[] = [];
  let at = 0;
  for (const match of text.matchAll(word)) {
    if (match.index > at) pieces.push({ type: 'text', value: text.slice(at, match.index) });
    const markup = markupOf(Number(match[1]));
    if (markup !== undefined) pieces.push(markup);
    at = match.index + match[0].length;
  }
  if (at < text.length) pieces.push({ type: 'text', value: text.slice(at) });
  return pieces;
}
