import type { Dimension } from '../../src/units/dimension.ts';

/** How a field is read: with a dimension, as a rating with or without a usual dimension, as a size, a supply input, or offers. */
export type Field =
  | { readonly as: 'quantity'; readonly of: Dimension }
  | { readonly as: 'rating'; readonly bareNumber: Dimension | null }
  | { readonly as: 'size' | 'supply input' | 'offers' };

/** One spelling that people use, and what it says. Numbers in the units that the key names. */
export interface Spelling {
  readonly text: string;
  readonly field: Field;
  /** Expected quantities, by dimension, in SI; a pair is a range or a tolerance from low to high. */
  readonly says?: Partial<Readonly<Record<Dimension, number | readonly [number, number]>>>;
  readonly count?: number;
  readonly marks?: readonly string[];
  readonly waveform?: 'AC' | 'DC';
  readonly hertz?: readonly number[];
  readonly millimetres?: readonly number[];
  /** Volts and amperes (or lowest, highest volts and amperes) of each offer. */
  readonly offers?: readonly (readonly number[])[];
  /** Part of the remark that must be made, its severity and the piece of text it points at. */
  readonly remark?: {
    readonly severity: 'error' | 'warning' | 'note';
    readonly says: string;
    readonly at: string;
    readonly suggests?: string;
  };
  readonly why: string;
}

/** A field of one dimension. */
export function quantity(of: Dimension): Field {
  return { as: 'quantity', of };
}

export const resistor = { as: 'rating', bareNumber: 'resistance' } as const;
export const capacitor = { as: 'rating', bareNumber: 'capacitance' } as const;
export const free = { as: 'rating', bareNumber: null } as const;
export const size = { as: 'size' } as const;
export const input = { as: 'supply input' } as const;
export const offers = { as: 'offers' } as const;

/** One row, short. */
export function row(text: string, field: Field, rest: Omit<Spelling, 'text' | 'field' | 'why'> & { readonly why?: string }): Spelling {
  return { text, field, why: 'common practice', ...rest };
}

/** A text that is refused, with the piece that the error points at. */
export function refused(text: string, field: Field, says: string, at: string, suggests?: string): Spelling {
  const remark = { severity: 'error' as const, says, at, ...(suggests === undefined ? {} : { suggests }) };
  return { text, field, remark, why: 'cannot be read one way only' };
}
