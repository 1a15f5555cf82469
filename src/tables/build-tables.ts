import { TABLES } from './index.ts';
import type { Table } from './table.ts';
import type { TableInput } from './table-declaration.ts';

/** The tables of an entry that have something to show, in the order of the registry. */
export function buildTables(input: TableInput): Table[] {
  return TABLES.flatMap((declaration) => declaration.build(input) ?? []);
}
