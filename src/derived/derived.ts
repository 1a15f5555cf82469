import type { EfficiencyFigures } from './efficiency/efficiency-figures.ts';
import type { LogSummary } from '../logs/log-summary.ts';
import type { Known } from '../values/value.ts';
import type { ShareMatrix } from '../sharing/share-matrix.ts';
import type { GainCurve } from '../stages/models/stage-model.ts';
import type { InsulationRow } from './insulation/insulation-row.ts';
import type { MainsFigures } from './mains/mains-figures.ts';
import type { HeatFigures } from './heat/heat-figures.ts';
import type { SustainedRun } from './heat/sustained-run.ts';
import type { PowerBankFigures } from './power-bank/power-bank-figures.ts';
import type { WindingFigures } from './windings/winding-figures.ts';
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
  /** Where it is worst, in words: "highest line", "at 20 V 3.25 A". */
  readonly corner?: string;
  /** The stress holds an allowance that a published design adds: shown beside the rating, never a fault of its own. */
  readonly allowance?: true;
  /** Published methods whose range the interval of the stress is. */
  readonly methods?: readonly string[];
  /** What the part stands for moments only, where its rating says so; it is shown and never judges. */
  readonly transientRating?: Known<'voltage'>;
}

/** A derating policy as a reader has to know it. */
interface DeratingInUse {
  readonly id: string;
  readonly title: string;
  readonly meaning: string;
  /** Whether the site wrote it itself. */
  readonly isOwn: boolean;
}

/** A value worked out for one stage, which the reviewer did not read anywhere: "reflected voltage at the highest output". */
export interface OperatingFigure {
  readonly stage: string;
  readonly name: string;
  readonly value: Known;
}

/** Gain of a resonant tank over frequency, of one stage. */
export interface StageGainCurve extends GainCurve {
  readonly stage: string;
}

/** One loss that could be worked out. */
export interface LossItem {
  readonly stage: string;
  readonly references: readonly string[];
  /** "conduction loss". */
  readonly name: string;
  readonly loss: Known<'power'>;
}

/** What the device loses at one measured point, beside what could be worked out of it. */
export interface LossBudget {
  /** The point: "115 V, 20.02 V 3.25 A". */
  readonly point: string;
  readonly measured: Known<'power'>;
  readonly items: readonly LossItem[];
  readonly explained: Known<'power'>;
  readonly unexplained: Known<'power'>;
}

/** What can be said of one stage in plain words. */
export interface StageVerdict {
  readonly stage: string;
  /** Trade name of the block. */
  readonly name: string;
  /** Sentences, in this order: thin, comfortable, not judged. Plain text. */
  readonly sentences: readonly string[];
  /** The one of them that tells of the ratings with room; null where none has. */
  readonly comfortable: string | null;
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
  /** Measured distances beside those of the tables, in the order of the entry; empty off the mains. */
  readonly insulation: readonly InsulationRow[];
  /** Inrush, discharge of the plug pins and touch current; null off the mains. */
  readonly mains: MainsFigures | null;
  /** Loss, surface and what temperature they give. */
  readonly heat: HeatFigures;
  /** What the cells hold, what comes out and what goes in; null for a device without cells. */
  readonly bank: PowerBankFigures | null;
  /** Tests of how long the power lasts, of points and of logs. */
  readonly sustained: readonly SustainedRun[];
  readonly stress: readonly StressRow[];
  /** The policy whose limits the stresses are held against. */
  readonly derating: DeratingInUse;
  readonly operating: readonly OperatingFigure[];
  /** Every way in which the turns ratio of a stage is given, and what it asks of the stage; stages that give none are left out. */
  readonly windings: readonly WindingFigures[];
  readonly gainCurves: readonly StageGainCurve[];
  /** What the logs beside the entry say, in its order; a log that could not be read is not among them. */
  readonly logs: readonly LogSummary[];
  /** Measured runs, their averages, and the limits that look at them. */
  readonly efficiency: EfficiencyFigures;
  /** Null where no loss at full load was measured. */
  readonly losses: LossBudget | null;
  readonly stageVerdicts: readonly StageVerdict[];
  /** Stages in the order power flows, in words: "bridge · boost PFC · LLC half bridge · 3 × buck". */
  readonly topology: string;
  /** kebab-case id of the topology family. */
  readonly family: string;
  /** Letter by count of correction dates: A, B, C … */
  readonly revision: string;
  /** Values that prose may quote by name with `:value[density]`. */
  readonly named: Readonly<Record<string, Known>>;
}
