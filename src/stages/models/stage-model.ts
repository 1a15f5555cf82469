import type { RoleId } from '../../roles/role.ts';
import type { Dimension } from '../../units/dimension.ts';
import type { Known } from '../../values/value.ts';

/** One voltage that a block can be asked for, with the most current that goes with it. */
export interface OutputPoint {
  readonly voltage: Known<'voltage'>;
  readonly current: Known<'current'>;
  readonly power: Known<'power'>;
  /** As the offer is written: "20 V 3.25 A". */
  readonly name: string;
}

/** Highest and lowest of a quantity over everything that can happen. */
export interface Span<D extends Dimension> {
  readonly highest: Known<D>;
  readonly lowest: Known<D>;
}

/** Which number of a parameter a model takes: the worse edge as a point, or the whole with its interval. */
export type ParameterEdge = 'low' | 'high' | 'whole';

/** What a block is given: values only, whatever an entry looks like. Missing ones say what is missing. */
export interface StageGiven {
  /** The author's name for the block, for messages. */
  readonly id: string;
  /** Mode words as written, lower case; empty where none is given. */
  readonly mode: string;
  /** Supply of the whole device: rms for alternating, with its crest. */
  readonly supply: Span<'voltage'> & {
    readonly kind: 'AC' | 'DC' | null;
    readonly peak: Known<'voltage'>;
    readonly frequency: Known<'frequency'>;
    readonly shaped: boolean;
    /** A vehicle: its load dump and jump start reach the input. */
    readonly isVehicle: boolean;
    readonly current: Known<'current'>;
  };
  /** Direct voltage that feeds the block: the bus, a rail, a battery, a vehicle. */
  readonly input: Span<'voltage'>;
  /** Lowest direct voltage that feeds the block while it gives a power: of a vehicle supply it may depend on the power. */
  lowestInputFor(power: Known<'power'>): Known<'voltage'>;
  /** Voltage at its output, over everything that is offered. */
  readonly output: Span<'voltage'> & { readonly points: readonly OutputPoint[] };
  /** Power that it gives at most. */
  readonly power: Known<'power'>;
  /** Efficiency at full load: of the block, else of the device, else assumed. */
  readonly efficiency: Known<'ratio'>;
  /** Primary turns over the turns of one secondary winding. */
  readonly turnsRatio: Known<'ratio'>;
  /** Turns of the windings, primary first. */
  readonly turns: readonly number[];
  /** What resets its core, with primary over reset turns; null where neither reset nor mode says it. */
  readonly reset: { readonly by: CoreResetKind; readonly ratio: Known<'ratio'> } | null;
  /** What rectifies its output; null where no such part is named. */
  readonly rectifiedBy: 'diode' | 'synchronous' | null;
  readonly cells: { readonly series: number; readonly parallel: number } | null;
  /** A suppressor that stands in the block, by its references. */
  readonly suppressor: string | null;
  /** Resistance of the clamp resistors together; null where none is named. */
  readonly clampResistance: Known<'resistance'> | null;
  /** A parameter that the author gives, at one edge or with its interval; null where there is none. */
  parameter<D extends Dimension>(key: string, dimension: D, edge: ParameterEdge): Known<D> | null;
}

/** What is known of the part beside its role: the side of the inductor on which the author says that it stands. */
export interface PartHint {
  readonly side: 'input' | 'output' | null;
}

/** A stress at its worst corner: "at 20 V 3.25 A"; the corner is null where the words of the quantity say it. */
export interface Corner<D extends 'voltage' | 'current'> {
  readonly stress: Known<D>;
  readonly corner: string | null;
}

interface StressWords {
  /** Trade word: "off-state voltage". */
  readonly quantity: string;
  /**
   * Judged against the line of the policy; against the rating itself where the stress is of moments; or `allowance`: it holds an
   * allowance that a design adds, so it is shown against the rating and is never said to be exceeded.
   */
  readonly against: 'policy' | 'rating' | 'allowance';
  /** Names of the published methods whose range the interval is. */
  readonly methods: readonly string[];
}

/** A voltage on one role of a block. */
export interface VoltageStress extends StressWords, Corner<'voltage'> {
  readonly dimension: 'voltage';
}

/** A current through one role of a block. Worked out on demand, since few parts are rated for a current. */
export interface CurrentStress extends StressWords {
  readonly dimension: 'current';
  readonly at: () => Corner<'current'>;
}

/** One stress on one role of a block, at its worst corner. */
export type Stress = VoltageStress | CurrentStress;

/** A value that follows from a block and that a reader wants to see: "turns ratio", "resonant frequency". */
export interface OperatingValue {
  /** Trade name. */
  readonly name: string;
  readonly value: Known;
}

/** Gain of a resonant tank over frequency, for a figure: first-harmonic approximation. */
export interface GainCurve {
  readonly resonance: Known<'frequency'>;
  /** Gain at full load of an output: the highest first, then the lowest where it is another one. */
  readonly loaded: readonly LoadedCurve[];
  readonly noLoad: readonly GainPair[];
  /** Gain that each output asks for at the highest bus. */
  readonly asked: readonly { readonly name: string; readonly gain: Known<'ratio'> }[];
  /** Where the tank has to work, corner by corner: each output at the highest and the lowest bus, loaded and unloaded. */
  readonly points: readonly GainPoint[];
  /** The given switching frequency and its ratio to the resonance; null where none is given. */
  readonly running: { readonly frequency: Span<'frequency'>; readonly ratio: Span<'ratio'> } | null;
}

/** Frequency over resonance, and the gain there. */
export type GainPair = readonly [ratio: number, gain: number];

/** Gain of a resonant tank with one output at its full load. */
export interface LoadedCurve {
  /** The output in words: "at 20 V 5 A". */
  readonly name: string;
  readonly pairs: readonly GainPair[];
  /** Where the gain is largest; below it the half bridge loses its soft switching. */
  readonly peak: GainPair;
}

/** One corner at which a resonant tank has to work. */
export interface GainPoint {
  /** Output and bus in words: "at 20 V 5 A, bus 390 V". */
  readonly name: string;
  readonly load: 'full load' | 'no load';
  readonly gain: Known<'ratio'>;
  /** Switching over resonant frequency that gives this gain, by the first-harmonic approximation. */
  readonly frequencyRatio: Known<'ratio'>;
  readonly frequency: Known<'frequency'>;
}

/** A current through a role for the loss of it, at the worst corner. */
export interface RoleCurrent {
  readonly current: Known<'current'>;
  readonly corner: string;
  /** Places in the circuit that parts of this role take, and how many of them carry the current at a time: a buck has two switches that take turns. */
  readonly places: number;
  readonly carrying: number;
}

/** How often the core of a forward may be driven, and how often it is. */
export interface ResetBalance {
  readonly by: CoreResetKind;
  /** Duty that the highest output asks for at the lowest input. */
  readonly asked: Known<'ratio'>;
  /** Duty that the author gives; null where none is given. */
  readonly stated: Known<'ratio'> | null;
  /** Largest duty at which the core is reset. */
  readonly largest: Known<'ratio'>;
}

/** What takes the core of a forward back in each cycle. */
type CoreResetKind = 'winding' | 'RCD' | 'active clamp' | 'two switches' | 'resonance';

/** What the turns ratio asks of a block at its voltages, and between which values such blocks are built: outside of them one of the two is wrong. */
export interface RatioAsk {
  /** In words: "gain for the highest output at the highest bus". */
  readonly name: string;
  readonly value: Known<'ratio'>;
  readonly least: number;
  readonly most: number;
}

/** The model of one topology block: pure functions of values. */
export interface StageModel {
  /** Stresses by role; a role that is left out gets no row. */
  readonly stresses: Readonly<Record<RoleId, (given: StageGiven, hint: PartHint) => readonly Stress[]>>;
  /** Whether its core is reset at the duty that it needs; null where nothing is said of the reset. */
  readonly reset?: (given: StageGiven) => ResetBalance | null;
  /** What its turns ratio asks of it. */
  readonly asks?: (given: StageGiven) => RatioAsk;
  /** Values worked out from what a reviewer has. */
  readonly operating?: (given: StageGiven) => readonly OperatingValue[];
  /** Gain curve of a resonant tank; null where the tank is not known. */
  readonly gainCurve?: (given: StageGiven) => GainCurve | null;
  /** Rms current through the switches of a role at the corner where it is largest, for their conduction loss. */
  readonly rms?: Readonly<Record<RoleId, (given: StageGiven, hint: PartHint) => RoleCurrent>>;
  /** What it assumes where the author gives nothing, a sentence each. */
  readonly assumes: readonly string[];
  /** What it does not say, a sentence each. */
  readonly refuses: readonly string[];
}
