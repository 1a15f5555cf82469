import type { Element, Root, RootContent } from 'hast';
import { inlineText } from './inline-text.ts';
import { walk } from './walk.ts';

/** A heading of the text as the page carries it. */
export interface ProseHeading {
  readonly depth: number;
  readonly id: string;
  readonly text: string;
}

const LEVELS = ['h1', 'h2', 'h3', 'h4', 'h5', 'h6'];

/** Gives every heading an id from its words, unique in the text, different from those of the page, and leaves the first level to the page's own title. */
export function settleHeadings(tree: Root, isTaken: (id: string) => boolean): ProseHeading[] {
  const found: Element[] = [];
  walk<RootContent>(tree, (node) => {
    if (node.type === 'element' && LEVELS.includes(node.tagName) && node.properties['id'] !== 'footnote-label') found.push(node);
    return undefined;
  });
  const down = found.some((node) => node.tagName === 'h1') ? 1 : 0;
  const used = new Set<string>();
  return found.map((node) => {
    const depth = Math.min(6, LEVELS.indexOf(node.tagName) + 1 + down);
    const text = inlineText(node).trim();
    const anchor = anchorOf(text);
    const id = unusedId(isTaken(anchor) ? `text-${anchor}` : anchor, used);
    node.tagName = `h${String(depth)}`;
    node.properties['id'] = id;
    return { depth, id, text };
  });
}

/** Anchor of a heading: lower-case letters and digits of any script, everything else a hyphen, so "65.5 W" is `65-5-w`. */
function anchorOf(text: string): string {
  const anchor = text
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{Letter}\p{Mark}\p{Number}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return anchor === '' ? 'section' : anchor;
}

function unusedId(wanted: string, used: Set<string>): string {
  let id = wanted;
  for (let count = 2; used.has(id); count += 1) id = `${wanted}-${String(count)}`;
  used.add(id);
  return id;
}
