import type { DataPath } from '../diagnostics/finding.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Quantity } from '../units/quantity.ts';
import type { ReadOn } from '../values/from-quantity.ts';
import type { Evidence } from '../values/value.ts';

/** What of the bench made something measured; both given only where the bench file knows them. */
export interface MadeBy {
  /** Instrument of the bench that it was read on. */
  readonly readOn?: ReadOn;
  /** Id of the method of the bench by which it was measured. */
  readonly method?: string;
  /** Instruments that the method is done with, where no one of them is known to have read it. */
  readonly with?: readonly string[];
}

/** A quantity in an entry: what was written, with its evidence and its place. */
export interface Fact<D extends Dimension = Dimension> extends MadeBy {
  readonly quantity: Quantity<D>;
  readonly evidence: EntryEvidence;
  readonly path: DataPath;
}

/** A row of the bench page that a measurement of an entry was made with: an instrument, or a method. */
export interface BenchLink {
  readonly id: string;
  /** As the entry calls it. */
  readonly name: string;
}

/** Evidence that an entry can give; a computed value never stands in one. */
export type EntryEvidence = Exclude<Evidence, 'computed'>;

/** Highest output power from an input voltage upwards. */
export interface PowerAtInput {
  readonly from: Quantity<'voltage'>;
  readonly power: Quantity<'power'>;
}

/** Capacity as a power bank prints it: charge at a voltage, energy, or both. */
export interface PrintedCapacity {
  readonly charge: Fact<'charge'> | null;
  readonly voltage: Fact<'voltage'> | null;
  readonly energy: Fact<'energy'> | null;
}
