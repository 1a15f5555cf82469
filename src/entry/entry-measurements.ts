import type { DataPath } from '../diagnostics/finding.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Fact, BenchLink } from './entry-facts.ts';

/** A cable as the author describes it: "1 m AWG 20, marked 5 A". What the words leave open is null. */
export interface CableUsed {
  readonly written: string;
  readonly length: Quantity<'length'> | null;
  /** American wire gauge of the supply conductors. */
  readonly gauge: number | null;
  readonly path: DataPath;
}

/** What one port carried in a point that loads several at once. */
export interface PortLoad {
  readonly port: string;
  /** Voltage that was set. */
  readonly output: Fact<'voltage'> | null;
  readonly measuredOutput: Fact<'voltage'> | null;
  readonly current: Fact<'current'> | null;
  /** Output power of the port, where it is given in place of volts and amperes. */
  readonly power: Fact<'power'> | null;
}

/** One measured point of efficiency, as people have it. */
export interface EfficiencyPoint {
  /** A single load point, or the stated average or highest figure of a run. */
  readonly statistic: 'point' | 'average' | 'peak';
  /** Stage it belongs to; null for the whole device. */
  readonly of: string | null;
  /** The port, or several that were loaded at once: "C1 + C2". */
  readonly port: string | null;
  /** Each of several ports that were loaded at once, in the order written; empty where one was. */
  readonly loads: readonly PortLoad[];
  readonly line: Fact<'voltage'> | null;
  /** Voltage that was set. */
  readonly output: Fact<'voltage'> | null;
  /** Voltage that was measured under load. */
  readonly measuredOutput: Fact<'voltage'> | null;
  readonly current: Fact<'current'> | null;
  readonly load: Fact<'ratio'> | Fact<'power'> | Fact<'resistance'> | null;
  readonly input: Fact<'power'> | null;
  readonly efficiency: Fact<'ratio'> | null;
  /** The author's words for a load that was set and not held: "not sustained, C1 fell to 12 V"; null where it was held. */
  readonly notSustained: string | null;
  readonly place: 'board' | 'connector' | 'cable end' | null;
  /** Cable between port and load, where one was used. */
  readonly cable: CableUsed | null;
  readonly method: string | null;
  /** Methods of the bench page; given where the bench file knows them. */
  readonly byMethod?: readonly BenchLink[];
  /** Instruments of the bench page among those that are named. */
  readonly byInstrument?: readonly BenchLink[];
  readonly instrument: string | null;
  readonly ambient: Fact<'temperature'> | null;
  readonly after: Fact<'time'> | null;
  readonly note: string | null;
  readonly path: DataPath;
}

export type MeasuredSubject =
  | 'standby'
  | 'ripple'
  | 'thermal'
  | 'touch current'
  | 'touch voltage'
  | 'inrush'
  | 'hold-up'
  | 'pin voltage'
  | 'stress'
  | 'frequency'
  | 'regulation'
  | 'droop'
  | 'sustained power'
  | 'delivered energy'
  | 'recharge energy'
  | 'recharge time';

/** A measured figure with its conditions, for standby, ripple and temperature rows. */
export interface MeasuredPoint {
  readonly subject: MeasuredSubject;
  readonly value: Fact;
  readonly place: string | null;
  /** Conditions as written, by the word of the format: line, port, output, load, ambient, after, emissivity, bandwidth, at. */
  readonly conditions: Readonly<Record<string, string>>;
  readonly method: string | null;
  /** Methods of the bench page; given where the bench file knows them. */
  readonly byMethod?: readonly BenchLink[];
  /** Instruments of the bench page among those that are named. */
  readonly byInstrument?: readonly BenchLink[];
  readonly note: string | null;
  readonly instrument: string | null;
  readonly path: DataPath;
}

/** A log beside the entry, and how its file is to be read. */
export interface LogFile {
  readonly id: string;
  readonly file: string;
  /** Heads of the file by what the column is: "voltage", "U(V)"; a unit behind "in": "Ch2 in mA". */
  readonly columns: Readonly<Record<string, string>>;
  readonly decimal: 'point' | 'comma';
  readonly port: string | null;
  readonly line: string | null;
  readonly ambient: string | null;
  /** What was done, by the time from the first row as written. */
  readonly events: Readonly<Record<string, string>>;
  /** Instruments that wrote it, in the author's words; by the word of the column where they differ. */
  readonly instrument: string | Readonly<Record<string, string>> | null;
  readonly method: string | null;
  /** Methods of the bench page; given where the bench file knows them. */
  readonly byMethod?: readonly BenchLink[];
  /** Instruments of the bench page among those that are named. */
  readonly byInstrument?: readonly BenchLink[];
  readonly note: string | null;
  readonly path: DataPath;
}

export interface PhotoCallout {
  readonly part: string;
  /** Fractions of width and height, 0 to 1. */
  readonly x: number;
  readonly y: number;
}

/** A distance between two marks in a photo, in fractions of width and height. */
export interface PhotoDistance {
  readonly name: string;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  /** Id of the place of insulation that it was marked for. */
  readonly place: string | null;
  readonly path: DataPath;
}

export interface Photo {
  readonly file: string;
  readonly alt: string;
  readonly title: string | null;
  readonly credit: string | null;
  readonly callouts: readonly PhotoCallout[];
  readonly scale: {
    readonly from: readonly [number, number];
    readonly to: readonly [number, number];
    readonly length: Fact<'length'>;
  } | null;
  /** What is to be measured in it by the scale. */
  readonly distances: readonly PhotoDistance[];
  readonly note: string | null;
  readonly path: DataPath;
}
