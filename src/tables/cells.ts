import { valueOf } from '../values/from-quantity.ts';
import type { Evidence, Known, Value } from '../values/value.ts';
import type { Fact } from '../entry/entry.ts';
import type { Cell, Column, Row, RowGroup } from './table.ts';

export { counted } from '../units/counted.ts';

/** Words; a missing cell with its reason where there are none. */
export function words(text: string | null, reason = 'not given'): Cell {
  return text === null || text === '' ? { kind: 'missing', reason } : { kind: 'text', text };
}

/** A reference, part number or rating, set in the mono face. */
export function mono(text: string | null, reason = 'not given'): Cell {
  return text === null || text === '' ? { kind: 'missing', reason } : { kind: 'text', text, mono: true };
}

/** A value in its column's unit, or in `unit`. */
export function valueCell(value: Known, unit?: string): Cell {
  return { kind: 'value', value, ...(unit === undefined ? {} : { unit }) };
}

/** What the author wrote, as a value; a missing cell where nothing was written. */
export function factCell(fact: Fact | null, reason = 'not given', unit?: string): Cell {
  if (fact === null) return { kind: 'missing', reason };
  return valueCell(valueOf(fact, fact.path.join('.'), { bound: 'use' }), unit);
}

/** A column of words. */
export function textColumn(id: string, head: string): Column {
  return { id, head, unit: null, align: 'start' };
}

/** A column of numbers in one unit, or with a unit in each cell. */
export function numberColumn(id: string, head: string, unit: string | null): Column {
  return { id, head, unit, align: 'end' };
}

/** A column that a phone shows in words under the head of each row. */
export function detailColumn(column: Column): Column {
  return { ...column, phone: 'under' };
}

/** Rows without a heading of their own. */
export function plainGroup(rows: readonly Row[]): RowGroup {
  return { id: 'rows', title: null, glyph: null, rows };
}

/** The evidence of several values in words, each once, in the order of the list: "printed, measured". */
export function evidenceOf(values: readonly Value[]): string {
  const order: readonly Evidence[] = ['printed', 'marked', 'measured', 'datasheet', 'assumed', 'computed'];
  const found = new Set(values.map((value) => value.origin.evidence));
  return order.filter((word) => found.has(word)).join(', ');
}

/** Letters, digits and hyphens of a name, for the anchor of a row. */
export function rowId(name: string): string {
  const id = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return id === '' ? 'row' : id;
}
