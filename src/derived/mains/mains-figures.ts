import type { Entry } from '../../entry/entry.ts';
import type { DischargeRule } from '../../standards/x-capacitor-discharge.ts';
import type { Known } from '../../values/value.ts';

/** Whether a limit is kept; `not asked` where the rule asks nothing of this device. */
export type LimitVerdict = 'within' | 'straddles' | 'over' | 'withheld' | 'not asked';

/** One rule for the charge on the plug pins, worked for this device. */
export interface DischargeRow {
  readonly rule: string;
  readonly name: string;
  /** When the rule looks. */
  readonly seconds: number;
  /** Voltage that may be left then. */
  readonly limit: Known<'voltage'>;
  /** Voltage left then, and the time until the limit is reached. */
  readonly left: Known<'voltage'>;
  readonly time: Known<'time'>;
  /** `not asked` of a rule that is not written for chargers. */
  readonly verdict: LimitVerdict;
  readonly writtenFor: DischargeRule['writtenFor'];
  /** How the rule is known: "as quoted elsewhere". */
  readonly standing: string;
}

/** One limit for the current through a person, beside the current of the Y capacitors. */
export interface TouchRow {
  readonly limit: string;
  readonly name: string;
  readonly most: Known<'current'>;
  readonly verdict: LimitVerdict;
  readonly standing: string;
}

/** A voltage between output and earth as a meter showed it: a divider of Y capacitor and meter, beside the current that counts. */
export interface TouchVoltage {
  readonly written: string;
  /** Supply voltage as written; null where none is given, and the highest line is taken. */
  readonly line: string | null;
  readonly path: Entry['measurements'][number]['path'];
  /** Input resistance of the meter. */
  readonly meter: Known<'resistance'>;
  /** Current that the meter lets through at its reading. */
  readonly through: Known<'current'>;
  /** The most that the Y capacitors can put on such a meter. */
  readonly divider: Known<'voltage'>;
  /** The most that they pass to somebody who touches the output, at that line. */
  readonly passed: Known<'current'>;
}

/** What the mains side does to whoever plugs it in, pulls it out and touches it. */
export interface MainsFigures {
  /** Cold resistance of the inrush limiters in series, and the current that they alone would let through at the crest. */
  readonly limiter: Known<'resistance'>;
  readonly inrush: Known<'current'>;
  readonly xCapacitance: Known<'capacitance'>;
  /** Resistance across the line. */
  readonly bleed: Known<'resistance'>;
  readonly hasDischargeIc: boolean;
  readonly discharge: readonly DischargeRow[];
  readonly yCurrent: Known<'current'>;
  readonly touch: readonly TouchRow[];
  /** Voltages that were read between output and earth. */
  readonly touchVoltages: readonly TouchVoltage[];
}
