import type { DataPath } from '../diagnostics/finding.ts';
import type { Size, SupplyInput } from '../units/quantity.ts';
import type { EntryEvidence, Fact, MadeBy, PowerAtInput, PrintedCapacity } from './entry-facts.ts';

type DeviceKind = 'wall charger' | 'desktop charger' | 'car charger' | 'power bank' | 'open frame supply' | 'wireless charger';

export interface Device {
  readonly maker: string;
  /** The name it is sold under, without the maker. */
  readonly name: string;
  readonly model: string | null;
  readonly kind: DeviceKind;
  /** Year, or year and month, as written: "2026" or "2026-01". */
  readonly released: string | null;
  /** Price as written: "62 USD". */
  readonly price: { readonly amount: number; readonly currency: string } | null;
}

export interface Sample {
  readonly obtained: string | null;
  readonly lot: string | null;
  readonly serial: string | null;
  readonly firmware: string | null;
  readonly note: string | null;
}

/** What is printed on the device, as printed. */
export interface Nameplate {
  /** The first input line; null where none is given or none can be read. */
  readonly input: SupplyInput | null;
  /** Every input line that can be read. */
  readonly inputs: readonly SupplyInput[];
  /** Printed output lines, as written. */
  readonly output: readonly string[];
  /** Total output power, where the nameplate prints one. */
  readonly total: Fact<'power'> | null;
  /** Peak output power, where it is printed beside the continuous one. */
  readonly peak: Fact<'power'> | null;
  /** Total output power where it depends on the input voltage. */
  readonly totalAtInput: readonly PowerAtInput[];
  /** Printed capacity of a power bank's cells. */
  readonly capacity: PrintedCapacity | null;
  /** Rated capacity at a power bank's output. */
  readonly outputCapacity: PrintedCapacity | null;
  /** Protection class, symbols, approval words, as written. */
  readonly marks: readonly string[];
  /** How its lines are known: printed, unless the author says otherwise. */
  readonly evidence: EntryEvidence;
  readonly note: string | null;
}

/** What a size or a volume includes. */
export type SizeBasis = 'cased' | 'board';
type ProngState = 'folded' | 'removed' | 'included' | 'none';

/** Outer edges as measured or stated. */
export interface OuterSize extends MadeBy {
  readonly size: Size;
  readonly evidence: EntryEvidence;
  readonly path: DataPath;
}

export interface Body {
  readonly size: OuterSize | null;
  /** Measured by displacement, where given; it wins over edges multiplied. */
  readonly volume: Fact<'volume'> | null;
  readonly mass: Fact<'mass'> | null;
  readonly basis: SizeBasis;
  readonly prongs: ProngState | null;
  readonly cable: 'fixed' | 'none' | null;
  readonly inlet: string | null;
  readonly plug: string | null;
  readonly material: string | null;
  /** Other sizes that a document states for the same thing, as written. */
  readonly alsoStated: readonly string[];
  readonly note: string | null;
}
