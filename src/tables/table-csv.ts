import { SI_UNITS } from '../units/dimension.ts';
import { isMissing, type Value } from '../values/value.ts';
import { numberInUnit, plainDecimal } from './number-in-unit.ts';
import type { Cell, Column, Row, Table } from './table.ts';

/**
 * A table as comma-separated values after RFC 4180: CR LF, a head line with units in brackets, fields quoted where needed.
 * A column whose numbers have units of their own gets a second column for the unit. A port outside the set is an empty
 * field, a missing value is "not known:" with its reason. Group titles become the first column where there are any.
 */
export function tableCsv(table: Table): string {
  const titled = table.groups.some((group) => group.title !== null);
  const rows = table.groups.flatMap((group) => group.rows.map((row) => ({ title: group.title ?? '', row })));
  const mixed = table.columns.map((column, index) =>
    hasOwnUnits(
      column,
      rows.map(({ row }) => row.cells[index]),
    ),
  );
  const head = table.columns.flatMap((column, index) => headsOf(column, mixed[index] === true));
  const lines = rows.map(({ title, row }) => [...(titled ? [title] : []), ...fieldsOf(row, table.columns, mixed)]);
  return [[...(titled ? ['Group'] : []), ...head], ...lines].map((fields) => fields.map(quoted).join(',') + '\r\n').join('');
}

function headsOf(column: Column, mixed: boolean): string[] {
  if (mixed) return [column.head, `${column.head} unit`];
  return [column.unit === null || column.unit === '1' ? column.head : `${column.head} (${column.unit})`];
}

function hasOwnUnits(column: Column, cells: readonly (Cell | undefined)[]): boolean {
  return column.unit === null && cells.some((cell) => cell?.kind === 'value');
}

function fieldsOf(row: Row, columns: readonly Column[], mixed: readonly boolean[]): string[] {
  return columns.flatMap((column, index) => {
    const cell = row.cells[index] ?? { kind: 'none' };
    return mixed[index] === true ? [fieldOf(cell, column), unitOf(cell)] : [fieldOf(cell, column)];
  });
}

function fieldOf(cell: Cell, column: Column): string {
  switch (cell.kind) {
    case 'text':
    case 'mark':
      return cell.text;
    case 'none':
      return '';
    case 'missing':
      return `not known: ${cell.reason}`;
    case 'value':
      if (isMissing(cell.value)) return `not known: ${cell.value.reason}`;
      return [numberOf(cell.value, cell.unit ?? column.unit), ...(cell.suffix === undefined ? [] : [cell.suffix])].join(' ');
  }
}

function numberOf(value: Value, unit: string | null): string {
  const inUnit = unit === null ? value.nominal : numberInUnit(value.nominal, value.dimension, unit);
  return inUnit === null
    ? `${plainDecimal(value.nominal, value.significant)} ${SI_UNITS[value.dimension]}`
    : plainDecimal(inUnit, value.significant);
}

function unitOf(cell: Cell): string {
  if (cell.kind !== 'value' || isMissing(cell.value)) return '';
  return cell.unit ?? SI_UNITS[cell.value.dimension];
}

/** Quoted where a comma, a quotation mark or a line break stands in it (RFC 4180, section 2, rules 6 and 7). */
function quoted(field: string): string {
  return /[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field;
}
