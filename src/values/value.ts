import type { Dimension } from '../units/dimension.ts';

/** Where a fact was read by the author of an entry. */
type ReadEvidence = 'printed' | 'marked' | 'measured' | 'datasheet';

/** How a value came to be known. */
export type Evidence = ReadEvidence | 'assumed' | 'computed';

/**
 * Standing of a source: its own text was seen, a copy or quotation of it was, it is from memory, the trade does so and nobody published it,
 * or we worked it out ourselves with something other than this program.
 */
export type Standing = 'read' | 'secondary' | 'memory' | 'common practice' | 'worked apart';

/** A publication that a fact, a limit or an example comes from. */
export interface Source {
  readonly title: string;
  /** Clause, page, table or equation. */
  readonly section: string;
  readonly standing: Standing;
  readonly url?: string;
}

/** How one value came about; the trace of a computed one holds its inputs, so the whole tree can be shown. */
export type Origin =
  | {
      readonly evidence: ReadEvidence;
      readonly written: string;
      /** Data path in the entry: "parts.C5.rating". */
      readonly at: string;
      /** Id of the instrument of the bench that it was read on. */
      readonly instrument?: string;
      /** Id of the method of the bench by which it was measured. */
      readonly method?: string;
    }
  | { readonly evidence: 'assumed'; readonly reason: string; readonly source: Source }
  | { readonly evidence: 'computed'; /** Id of the formula. */ readonly formula: string; readonly inputs: Readonly<Record<string, Value>> };

/**
 * A number that knows its dimension, its interval and how it came about. SI units (degrees Celsius for temperatures);
 * always `low ≤ nominal ≤ high`, all finite.
 */
export interface Value<D extends Dimension = Dimension> {
  readonly dimension: D;
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
  /** Significant digits that the nominal value supports. */
  readonly significant: number;
  readonly origin: Origin;
}

/** A value that is not there, and why. `needs` names what would have to be known ("mass", "bleed resistor"). */
export interface Missing {
  readonly missing: true;
  readonly reason: string;
  readonly needs: readonly string[];
}

/** A value or the reason why there is none. */
export type Known<D extends Dimension = Dimension> = Value<D> | Missing;

/** Tells a value from a missing one. */
export function isMissing(known: Known): known is Missing {
  return 'missing' in known;
}
