import type { Derived } from '../derived/derived.ts';
import type { Entry } from '../entry/entry.ts';
import type { Table } from './table.ts';

/** What a table is built from. */
export interface TableInput {
  readonly entry: Entry;
  readonly derived: Derived;
}

/** One derived table. */
export interface TableDeclaration {
  /** kebab-case; what the directive `::table{port-share}` names. */
  readonly id: string;
  readonly title: string;
  /** The page draws it as a figure or list of its own, straight from the derived values, and needs the table only where the author places it. */
  readonly hasFigure?: true;
  /** The table, or null where the entry has nothing to show in it. */
  readonly build: (input: TableInput) => Table | null;
}
