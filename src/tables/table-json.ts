import { SI_UNITS } from '../units/dimension.ts';
import { isMissing, type Value } from '../values/value.ts';
import type { Cell, Row, Table } from './table.ts';

/** A table as JSON: numbers in SI units with interval, digits and evidence; missing ones with the reason. */
export function tableJson(table: Table): string {
  const { id, title, caption, columns, groups, notes } = table;
  const rows = groups.flatMap((group) => group.rows.map((row) => ({ id: row.id, group: group.title, cells: cellsOf(row, table) })));
  return JSON.stringify({ id, title, caption, columns: columns.map(({ id, head }) => ({ id, head })), rows, notes }, null, 2) + '\n';
}

function cellsOf(row: Row, table: Table): Record<string, unknown> {
  return Object.fromEntries(table.columns.map((column, index) => [column.id, plainCell(row.cells[index] ?? { kind: 'none' })]));
}

function plainCell(cell: Cell): unknown {
  switch (cell.kind) {
    case 'text':
      return cell.text;
    case 'mark':
      return { verdict: cell.mark, text: cell.text };
    case 'none':
      return null;
    case 'missing':
      return { missing: cell.reason };
    case 'value':
      return isMissing(cell.value)
        ? { missing: cell.value.reason }
        : { ...plainValue(cell.value), ...(cell.suffix === undefined ? {} : { remark: cell.suffix }) };
  }
}

function plainValue({ dimension, low, nominal, high, significant, origin }: Value): object {
  return { value: nominal, low, high, unit: SI_UNITS[dimension], significant, evidence: origin.evidence };
}
