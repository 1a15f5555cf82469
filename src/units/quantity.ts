import type { Dimension } from './dimension.ts';

/** What kind of statement a written number is: a plain value, a span, or one side of a limit. */
export type Bound = 'value' | 'range' | 'at most' | 'below' | 'at least' | 'above';

/** Word that the trade puts behind a number. */
export type Qualifier = 'typical' | 'maximum' | 'minimum' | 'nominal';

/** Where in the text that was read something stands: UTF-16 offsets, end exclusive. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/**
 * One quantity as somebody wrote it. Numbers are in the SI unit of `dimension` (degrees Celsius for temperatures).
 * `low` and `high` hold the stated range or tolerance; `null` means that the writing gives no bound on that side
 * ("≤ 75 mW" has no lower one). A plain value has `low = nominal = high`.
 */
export interface Quantity<D extends Dimension = Dimension> {
  readonly dimension: D;
  readonly low: number | null;
  readonly nominal: number;
  readonly high: number | null;
  readonly bound: Bound;
  readonly qualifier: Qualifier | null;
  /** Significant digits as written. */
  readonly significant: number;
  /** Weight of the last written digit, in the SI unit: 0.01 for "2.25 A". */
  readonly resolution: number;
  /** Said to be alternating or direct, where the writing says so. */
  readonly waveform: 'AC' | 'DC' | null;
  /** Name written before it ("ESR", "RDS(on)"), "at" for a condition ("@ 25 °C"), "peak to peak"; absent where there is none. */
  readonly label?: string;
  /** The piece of text that was read, as written. */
  readonly written: string;
  /** Unit with prefix in canonical spelling, such as "mΩ" or "µF". */
  readonly unit: string;
  readonly span: Span;
}

/** Something about a text worth saying although it could be read, or the reason why it could not. */
export interface ReadingRemark {
  readonly severity: 'error' | 'warning' | 'note';
  readonly message: string;
  /** What was probably meant, ready to put after "did you mean". */
  readonly suggestion: string | null;
  readonly span: Span;
}

/** Outcome of reading a text: never an exception, never a silent guess. A refused reading has at least one error. */
export type Reading<T> =
  | { readonly ok: true; readonly value: T; readonly remarks: readonly ReadingRemark[] }
  | { readonly ok: false; readonly remarks: readonly ReadingRemark[] };

/** A word in a rating that is not a quantity: safety class, dielectric, fuse speed, technology, or any other word. */
export interface RatingMark {
  readonly kind: 'safety class' | 'dielectric' | 'fuse speed' | 'breaking capacity' | 'technology' | 'word';
  /** Canonical spelling: "X2", "Y1", "X7R", "T", "polymer". */
  readonly text: string;
  readonly span: Span;
}

/** A part rating as the trade writes it: `2 × 470 µF / 25 V polymer` is count 2, two quantities, one mark. */
export interface Rating {
  /** How many equal pieces the writing counts; 1 where it counts none. */
  readonly count: number;
  readonly quantities: readonly Quantity[];
  readonly marks: readonly RatingMark[];
  /** Turns of the windings in the order written, empty where none are: `34:4:4`. */
  readonly turns: readonly number[];
  readonly written: string;
}

/** Outer size: a box of three edges (in the order written) or a cylinder. Lengths in metres with their tolerance. */
export type Size =
  | {
      readonly shape: 'box';
      readonly edges: readonly [Quantity<'length'>, Quantity<'length'>, Quantity<'length'>];
      readonly written: string;
    }
  | { readonly shape: 'cylinder'; readonly diameter: Quantity<'length'>; readonly height: Quantity<'length'>; readonly written: string };

/** Supply input as a nameplate prints it. `frequencies` in hertz as printed; `current` is the printed maximum. */
export interface SupplyInput {
  readonly kind: 'AC' | 'DC';
  /** low and high of the printed range; equal when one voltage is printed. */
  readonly voltage: Quantity<'voltage'>;
  readonly frequencies: readonly Quantity<'frequency'>[];
  readonly current: Quantity<'current'> | null;
  readonly power: Quantity<'power'> | Quantity<'apparent power'> | null;
  readonly written: string;
}
