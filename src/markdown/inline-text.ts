import type { Nodes } from 'hast';

/** The words of a node, without its markup. */
export function inlineText(node: Nodes): string {
  if (node.type === 'text') return node.value;
  return 'children' in node ? node.children.map(inlineText).join('') : '';
}
