import type { Root, RootContent } from 'mdast';
import type { Finding } from '../diagnostics/finding.ts';
import { proseFinding, stretchOf } from './prose-finding.ts';
import { walk } from './walk.ts';

/** Undoes what Markdown makes of the trade's own notation (`68*52*29 mm`), and says so. */
export function keepTradeNotation(tree: Root, text: string, startOffset: number): Finding[] {
  const findings: Finding[] = [];
  walk<RootContent>(tree, (node, index, parent) => {
    if (node.type !== 'emphasis' && node.type !== 'strong') return undefined;
    const { start, end } = stretchOf(node);
    if (!/\d/.test(text[start - 1] ?? '') || !/^\*+\s?\d/.test(text.slice(start, end))) return undefined;
    parent.children[index] = { type: 'text', value: text.slice(start, end) };
    findings.push(
      proseFinding(
        'prose-star-between-digits',
        { start: start - 1, end },
        startOffset,
        `"${text.slice(start - 1, end)}" would be read as emphasis; it is kept as written`,
      ),
    );
    return index + 1;
  });
  return findings;
}

/** Rows of Markdown tables with more cells than the heading has: what stands in them is dropped by the format. */
export function tableRowsTooLong(tree: Root, startOffset: number): Finding[] {
  const findings: Finding[] = [];
  walk<RootContent>(tree, (table) => {
    if (table.type !== 'table') return undefined;
    const [head, ...rows] = table.children;
    const wide = head?.children.length ?? 0;
    for (const row of rows) {
      const extra = row.children[wide];
      const last = row.children.at(-1);
      if (extra === undefined || last === undefined) continue;
      const stretch = { start: stretchOf(extra).start, end: stretchOf(last).end };
      findings.push(
        proseFinding(
          'prose-table-cells',
          stretch,
          startOffset,
          `This row has ${String(row.children.length)} cells, its heading ${String(wide)}`,
        ),
      );
    }
    return undefined;
  });
  return findings;
}
