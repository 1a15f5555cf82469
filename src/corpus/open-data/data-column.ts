/** One column of a published table: its head with the unit, what it holds, and how to get it from a row. Empty where it is not known. */
export interface DataColumn<Row> {
  readonly head: string;
  readonly type: 'string' | 'number' | 'integer' | 'date' | 'boolean';
  readonly description: string;
  readonly value: (row: Row) => string | number | boolean | null;
}

/** The head line of a table as comma-separated values after RFC 4180. */
export function csvHead<Row>(columns: readonly DataColumn<Row>[]): string {
  return line(columns.map((column) => column.head));
}

/** Rows as comma-separated values, without the head line. */
export function csvRows<Row>(columns: readonly DataColumn<Row>[], rows: readonly Row[]): string {
  return rows.map((row) => line(columns.map((column) => text(column.value(row))))).join('');
}

function text(value: string | number | boolean | null): string {
  return value === null ? '' : String(value);
}

function line(fields: readonly string[]): string {
  return fields.map(quoted).join(',') + '\r\n';
}

/** Quoted where a comma, a quotation mark or a line break stands in it (RFC 4180, section 2, rules 6 and 7). */
function quoted(field: string): string {
  return /[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field;
}
