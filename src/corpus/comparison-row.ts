import type { Verdict } from '../derived/derived.ts';

/** Parts of a comparison, in the order of the page. */
export const COMPARISON_GROUPS = ['Output', 'Size', 'Power path', 'Ratings, stress over rating', 'Record'] as const;
export type ComparisonGroup = (typeof COMPARISON_GROUPS)[number];

/** What one sheet says in one row of a comparison. */
export interface ComparisonRow {
  /** The same on every sheet that has this row: "density", "stress-bulk-capacitor-voltage". */
  readonly id: string;
  readonly group: ComparisonGroup;
  readonly label: string;
  /** As printed in the cell; starts with a dash and says why where the value is missing. */
  readonly text: string;
  /** Interval in the unit of the label, for "which is better" and for the strip; null for words and for what is missing. */
  readonly range: readonly [low: number, nominal: number, high: number] | null;
  /** Which end is better, where one is: more watts from a litre, fewer in standby. Null where the reader's needs decide. */
  readonly better: 'higher' | 'lower' | null;
  /** Under what conditions the number holds; a better side is named only between equal conditions. */
  readonly basis: string;
  readonly mark: Verdict | null;
}
