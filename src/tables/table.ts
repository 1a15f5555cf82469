import type { Known } from '../values/value.ts';

/** How the evidence of a cell or a mark is drawn. */
export type JudgementMark = 'within' | 'straddles' | 'over' | 'withheld' | 'error' | 'warning' | 'note';

/** One cell of a derived table: plain data, drawn by one component, exported as CSV and JSON, quoted in prose. */
export type Cell =
  | { readonly kind: 'text'; readonly text: string; readonly link?: string; readonly mono?: boolean }
  | {
      readonly kind: 'value';
      readonly value: Known;
      /** Unit to show it in; the column's unit where left out. */ readonly unit?: string;
      readonly decimals?: number;
      readonly bar?: Bar;
      /** Where it leads, for a value whose origin does not say it: what measured both sides of an efficiency. */ readonly link?: string;
      /** Words after the number: "shared with A1". */ readonly suffix?: string;
    }
  | { readonly kind: 'mark'; readonly mark: JudgementMark; readonly text: string }
  /** Outside the row's set: a short rule. */
  | { readonly kind: 'none' }
  | { readonly kind: 'missing'; readonly reason: string };

/** Bar in a cell, as fractions of the column's one scale. */
export interface Bar {
  readonly fraction: number;
  /** The port's own limit on the same scale. */
  readonly tick: number | null;
  readonly style: 'filled' | 'open' | 'dashed';
}

export interface Column {
  readonly id: string;
  readonly head: string;
  readonly unit: string | null;
  readonly align: 'start' | 'end';
  /** A phone has no room for it: there it stands in words under the head of its row. */
  readonly phone?: 'under';
}

export interface Row {
  /** Stable id, an anchor within the table. */
  readonly id: string;
  readonly cells: readonly Cell[];
}

export interface RowGroup {
  readonly id: string;
  readonly title: string | null;
  /** Stage glyph or null. */
  readonly glyph: string | null;
  readonly rows: readonly Row[];
}

/** A derived table as data. `id` is what the directive `::table{port-share}` names. */
export interface Table {
  readonly id: string;
  readonly title: string;
  /** What the table shows, one or two sentences, the number first. */
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly groups: readonly RowGroup[];
  readonly notes: readonly string[];
}
