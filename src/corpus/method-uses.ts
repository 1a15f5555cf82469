import type { FormulaUse } from './formula-uses.ts';
import { ROWS_A_PAGE } from './pages-of.ts';
import type { SheetSummary } from './prepared.ts';

/** The sheets that use one formula: how many there are, and what the newest of them compute with it. */
export interface MethodUses {
  readonly sheets: number;
  /** Newest sheet first, at most one page of a list. */
  readonly newest: readonly (Omit<FormulaUse, 'formula'> & { readonly slug: string })[];
}

/** Uses by formula id over the sheets that are listed, in their order; written as `methods.json` for the site. */
export function methodUses(
  records: readonly { readonly slug: string; readonly uses: readonly FormulaUse[] }[],
  listed: readonly SheetSummary[],
): Readonly<Record<string, MethodUses>> {
  const bySlug = new Map(records.map((record) => [record.slug, record.uses]));
  const uses = new Map<string, { sheets: number; newest: MethodUses['newest'][number][] }>();
  for (const { slug } of listed) {
    for (const { formula, label, value, others } of bySlug.get(slug) ?? []) {
      const known = uses.get(formula) ?? { sheets: 0, newest: [] };
      known.sheets += 1;
      if (known.newest.length < ROWS_A_PAGE) known.newest.push({ slug, label, value, others });
      uses.set(formula, known);
    }
  }
  return Object.fromEntries(uses);
}
