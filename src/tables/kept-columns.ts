import type { Cell, Row, Table } from './table.ts';

/**
 * The table without the columns that are empty in every row. Where a column lacks the same thing in every row, the reason
 * stands once among the notes: "Air, rise: air temperature not given."
 */
export function withoutEmptyColumns(table: Table): Table {
  const rows = table.groups.flatMap((group) => group.rows);
  const kept = table.columns.map((_, index) => index === 0 || rows.some((row) => hasContent(row.cells[index])));
  if (kept.every(Boolean)) return table;
  const only = (row: Row): Row => ({ ...row, cells: row.cells.filter((_, index) => kept[index] === true) });
  return {
    ...table,
    columns: table.columns.filter((_, index) => kept[index] === true),
    groups: table.groups.map((group) => ({ ...group, rows: group.rows.map(only) })),
    notes: [...table.notes, ...absences(table, kept, rows)],
  };
}

function hasContent(cell: Cell | undefined): boolean {
  return cell !== undefined && cell.kind !== 'none' && reasonOf(cell) === null;
}

function reasonOf(cell: Cell): string | null {
  if (cell.kind === 'missing') return cell.reason;
  return cell.kind === 'value' && 'missing' in cell.value ? cell.value.reason : null;
}

/** One sentence for each reason that a whole column shares. */
function absences(table: Table, kept: readonly boolean[], rows: readonly Row[]): readonly string[] {
  const heads = new Map<string, string[]>();
  for (const [index, { head }] of table.columns.entries()) {
    const reasons = new Set(rows.flatMap(({ cells }) => cells.slice(index, index + 1).filter(({ kind }) => kind !== 'none')).map(reasonOf));
    const [reason] = reasons;
    if (kept[index] === true || reasons.size !== 1 || reason == null) continue;
    heads.set(reason, [...(heads.get(reason) ?? []), head]);
  }
  return [...heads].map(([reason, names]) => `${names.map((name, at) => (at === 0 ? name : name.toLowerCase())).join(', ')}: ${reason}.`);
}
