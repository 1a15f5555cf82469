/** A node with children; the shape that both syntax trees share. */
interface ParentNode<N> {
  children: N[];
}

/**
 * Visits the nodes under `parent` in the order of the text. `visitor` returns nothing to go on into the node's own children,
 * or the index in its parent at which to go on instead. (The usual library for this names a function at every node, which
 * took a third of the time of a whole entry.)
 */
export function walk<N extends object>(
  parent: ParentNode<N>,
  visitor: (node: N, index: number, parent: ParentNode<N>) => number | undefined,
): void {
  let index = 0;
  for (let node = parent.children[index]; node !== undefined; node = parent.children[index]) {
    const next = visitor(node, index, parent);
    if (next === undefined && isParent(node)) walk(node, visitor);
    index = next ?? index + 1;
  }
}

function isParent<N extends object>(node: N): node is N & ParentNode<N> {
  return 'children' in node && Array.isArray(node.children);
}
