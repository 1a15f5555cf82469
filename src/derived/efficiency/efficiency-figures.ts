import type { EfficiencyPoint, Port } from '../../entry/entry.ts';
import type { OutputClass } from '../../standards/efficiency/efficiency-rule.ts';
import type { Known, Standing, Value } from '../../values/value.ts';

/** What is certain of an efficiency: both ends, as fractions. A bound ("> 94 %") leaves one end open: it is then 0 or 1. */
export interface EfficiencySpan {
  readonly low: number;
  readonly high: number;
}

/** A port that a run loaded, at the voltage that was set there. */
export interface RunPort {
  readonly id: string;
  /** Null for a name that the entry does not have. */
  readonly port: Port | null;
  /** Volts; null where not given. */
  readonly setting: number | null;
  /** What the port is rated for at this setting, from its offers; null where they do not say it. */
  readonly rated: { readonly voltage: Value<'voltage'>; readonly current: Value<'current'> } | null;
  /** The same current in amperes. */
  readonly fullAmps: number | null;
}

/** Full load of several ports at once. */
export interface FullLoads {
  /** Rated power over the sum of the ports' ratings; above one nothing is taken off. */
  readonly derating: Value<'ratio'>;
  /** Current of each port at full load, in the order of the ports, A. */
  readonly amps: readonly number[];
}

/** One measured point of a run, computed as far as it goes. */
export interface RunPoint {
  readonly source: EfficiencyPoint;
  /** Share of the reference current or power, 1 for full load; null where it cannot be told. */
  readonly share: number | null;
  /** What each of several ports carried of its own full load; null for one port, and where that is not known. */
  readonly spread: readonly number[] | null;
  readonly output: Known<'power'>;
  readonly efficiency: Known<'ratio'>;
  readonly span: EfficiencySpan | null;
  readonly loss: Known<'power'>;
}

/** Measured points under the same conditions: the same ports, voltages, line and place. */
export interface EfficiencyRun {
  /** The port, or several that were loaded at once: "C1 + C2". */
  readonly port: string | null;
  readonly ports: readonly RunPort[];
  /** Volts at which the ports were set; null where not given, or where they differ. */
  readonly setting: number | null;
  /** The voltages in words: "20 V", "20 V + 9 V"; null where not given. */
  readonly settings: string | null;
  /** Volts of the supply; null where not given. */
  readonly line: number | null;
  readonly place: EfficiencyPoint['place'];
  /** Reported by the device itself or by what is plugged in, printed on it, or assumed: shown, never judged. */
  readonly isReported: boolean;
  /** Current that stands for full load of one port, from its offers; null where they do not say it, and for several ports. */
  readonly fullAmps: number | null;
  /** Full load of several ports; null for one port, and where a rating is not known. */
  readonly full: FullLoads | null;
  readonly points: readonly RunPoint[];
  /** Mean over 25, 50, 75 and 100 % of full load, as measured or as stated. */
  readonly mean: Known<'ratio'>;
  readonly meanSpan: EfficiencySpan | null;
}

export type LimitVerdict = 'meets' | 'misses' | 'undecided';

/** A measured figure against one limit of one rule. */
export interface EfficiencyJudgement {
  readonly rule: string;
  readonly of: 'average' | 'a tenth of the load' | 'no load';
  readonly outputClass: OutputClass;
  /** Nameplate power that the limit follows from, W. */
  readonly watts: number;
  readonly port: string | null;
  /** Volts at which the ports were set; null where they differ. */
  readonly setting: number | null;
  /** The same in words, as the run has them. */
  readonly settings: string | null;
  readonly line: number | null;
  /** What its points were measured with, for a link; the figure itself is worked out. */
  readonly source: EfficiencyPoint | null;
  /** The figure: a ratio for the loads, a power without load. */
  readonly measured: Known;
  /** Limit in SI: a fraction, or watts. */
  readonly limit: number;
  readonly standing: Standing;
  /** Distance on the good side of the limit: points of a per cent, or watts; null where it cannot be told. Both ends of what is certain. */
  readonly margin: { readonly low: number; readonly high: number } | null;
  readonly verdict: LimitVerdict;
  /** Why it is undecided, or what was taken off. */
  readonly remark: string | null;
}

/** What the device takes with nothing plugged in. */
export interface NoLoadFigure {
  readonly line: number | null;
  /** Reported by the device itself: shown, never judged. */
  readonly isReported: boolean;
  readonly power: Known<'power'>;
  /** Both ends of what is certain of it, W; null where only a lower end is. */
  readonly span: { readonly low: number; readonly high: number } | null;
  readonly yearly: Known<'energy'>;
}

/** Efficiency of the whole device: runs, judgements, and what it takes without load. */
export interface EfficiencyFigures {
  readonly runs: readonly EfficiencyRun[];
  readonly noLoad: readonly NoLoadFigure[];
  readonly judgements: readonly EfficiencyJudgement[];
  /** Why no rule looks at it; null where rules do. */
  readonly outOfScope: string | null;
}
