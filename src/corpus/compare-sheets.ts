import { COMPARISON_GROUPS, type ComparisonGroup, type ComparisonRow } from './comparison-row.ts';

/** One row over all compared sheets. */
export interface ComparedRow {
  readonly id: string;
  readonly label: string;
  /** One cell a sheet; null where the sheet has no such row. */
  readonly cells: readonly (ComparisonRow | null)[];
  /** Whether the sheets say different things. */
  readonly differs: boolean;
  /** Place of the one sheet that is better beyond doubt; null where better has no meaning, conditions differ, or intervals overlap. */
  readonly better: number | null;
}

/** Rows by group, in the order of the page; a row that only some sheets have stands where the first of them has it. */
export function compareSheets(
  sheets: readonly (readonly ComparisonRow[])[],
): readonly { readonly group: ComparisonGroup; readonly rows: readonly ComparedRow[] }[] {
  return COMPARISON_GROUPS.map((group) => {
    const labels = new Map<string, string>();
    for (const rows of sheets) for (const row of rows) if (row.group === group && !labels.has(row.id)) labels.set(row.id, row.label);
    const rows = [...labels].map(([id, label]) => {
      const cells = sheets.map((own) => own.find((row) => row.id === id) ?? null);
      const differs = new Set(cells.map((cell) => cell?.text ?? '')).size > 1;
      return { id, label, cells, differs, better: differs ? betterOf(cells) : null };
    });
    return { group, rows };
  }).filter(({ rows }) => rows.length > 0);
}

/** A sheet is better where its whole interval lies on the better side of every other one, measured on one basis. */
function betterOf(cells: readonly (ComparisonRow | null)[]): number | null {
  const known = cells.filter((cell) => cell !== null && cell.range !== null && cell.better !== null);
  if (cells.length < 2 || known.length < cells.length || new Set(known.map((cell) => cell?.basis)).size > 1) return null;
  const place = cells.findIndex((cell, index) =>
    cells.every((other, at) => {
      if (at === index) return true;
      const [own, others] = [cell?.range, other?.range];
      if (!own || !others) return false;
      return cell?.better === 'higher' ? own[0] > others[2] : own[2] < others[0];
    }),
  );
  return place === -1 ? null : place;
}
