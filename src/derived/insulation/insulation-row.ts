import type { InsulationKind, RequiredDistances } from '../../standards/insulation/required-distances.ts';
import type { Known } from '../../values/value.ts';

/** `below`: shorter than the tables ask; `withheld`: not measured, or the tables do not reach. */
export type DistanceVerdict = 'within' | 'straddles' | 'below' | 'withheld';

/** One distance of one place: measured beside required, in metres. */
export interface DistanceRow {
  readonly measured: Known<'length'>;
  readonly required: Known<'length'>;
  readonly verdict: DistanceVerdict;
}

/** One place of insulation judged by the tables of IEC 60664-1. An indication, never a compliance verdict. */
export interface InsulationRow {
  readonly place: string;
  /** Kind that it is judged as; null where nothing says what it must be. */
  readonly kind: InsulationKind | null;
  /** Working voltage, rms and peak. */
  readonly rms: Known<'voltage'>;
  readonly peak: Known<'voltage'>;
  readonly clearance: DistanceRow;
  readonly creepage: DistanceRow;
  /** Impulse that the clearance was read for, V; null where there is none. */
  readonly impulse: number | null;
  readonly decidedBy: RequiredDistances['decidedBy'];
  /** What was assumed or has to be known when reading the row, a sentence each. */
  readonly notes: readonly string[];
}
