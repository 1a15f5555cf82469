import type { Known } from '../values/value.ts';
import type { ShareMatrix } from '../sharing/share-matrix.ts';
import type { PowerPath } from './power-path/power-path.ts';

/** Volume and what follows from it; the basis says what is inside the volume. */
export interface SizeFigures {
  readonly volume: Known<'volume'>;
  readonly density: Known<'power density'>;
  readonly specificPower: Known<'specific power'>;
  /** "cased, prongs folded", "board". */
  readonly basis: string;
}

/** What the supply puts on the input: mains, vehicle or USB. */
export interface InputFigures {
  /** Highest supply voltage that is assumed or printed, rms for AC. */
  readonly highLine: Known<'voltage'>;
  /** Its crest (AC) or itself (DC). */
  readonly peak: Known<'voltage'>;
  readonly lowLine: Known<'voltage'>;
  /** Input current at low line and full load. */
  readonly inputCurrent: Known<'current'>;
}

/** The bulk capacitor as a store. Missing for devices that have none. */
export interface BulkFigures {
  readonly references: readonly string[];
  readonly capacitance: Known<'capacitance'>;
  /** Voltage it is charged to: the PFC bus where there is one, else the crest of the mains. */
  readonly voltage: Known<'voltage'>;
  readonly energy: Known<'energy'>;
  /** Resistance of the known way down, and the time to 60 V through it. */
  readonly bleed: Known<'resistance'>;
  readonly timeToSafe: Known<'time'>;
}

export type Verdict = 'within' | 'straddles' | 'over' | 'withheld';

/** One stress against one rating. */
export interface StressRow {
  readonly references: readonly string[];
  readonly role: string;
  readonly stage: string;
  /** "off-state voltage", "voltage", "current". */
  readonly quantity: string;
  readonly stress: Known;
  readonly rating: Known;
  readonly ratio: Known<'ratio'>;
  /** Highest ratio the policy accepts, null where it names none. */
  readonly limit: number | null;
  /** Id of the derating policy that gave the limit. */
  readonly policy: string;
  readonly verdict: Verdict;
}

/** Everything computed from one entry, before tables and checks look at it. Plain data, JSON-safe. */
export interface Derived {
  /** Rated output power of the device. */
  readonly ratedPower: Known<'power'>;
  readonly size: SizeFigures;
  readonly input: InputFigures;
  readonly bulk: BulkFigures;
  readonly shares: ShareMatrix | null;
  /** The way of the power from the supply to the ports; null where no stage is described. */
  readonly path: PowerPath | null;
  readonly stress: readonly StressRow[];
  /** Stages in the order power flows, in words: "bridge · boost PFC · LLC half bridge · 3 × buck". */
  readonly topology: string;
  /** kebab-case id of the topology family. */
  readonly family: string;
  /** Letter by count of correction dates: A, B, C … */
  readonly revision: string;
  /** Values that prose may quote by name with `:value[density]`. */
  readonly named: Readonly<Record<string, Known>>;
}
