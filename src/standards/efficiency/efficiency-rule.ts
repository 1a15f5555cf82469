import type { Source, Standing } from '../../values/value.ts';

/** Kinds of external power supplies that have limits of their own. `low voltage`: below 6 V and at least 550 mA. */
export type OutputClass = 'low voltage' | 'basic voltage' | 'multiple voltage';

/** A limit of efficiency over the nameplate power P in watts, as a fraction, in the three steps that all rules share. */
export interface EfficiencyLine {
  /** Up to 1 W: slope × P + base. */
  readonly small: readonly [slope: number, base: number] | null;
  /** Above 1 W up to 49 W: log × ln P − linear × P + base. */
  readonly middle: readonly [log: number, linear: number, base: number];
  /** Above 49 W. */
  readonly large: number;
  readonly standing: Standing;
}

/** A limit of the power taken with nothing plugged in, in watts, below and above the step at 49 W. */
export interface NoLoadLine {
  readonly upTo49: number;
  readonly above49: number;
  readonly standing: Standing;
}

/** One set of limits as published: which outputs, from when, at which line voltages and loads. Guidance for a reviewer, never a verdict of compliance. */
export interface EfficiencyRule {
  readonly id: string;
  readonly name: string;
  /** From when it applies, in words. */
  readonly applies: string;
  /** Line voltages at which it is tested. */
  readonly lines: readonly number[];
  /** Which of the voltages of an adaptive supply it looks at. */
  readonly settings: 'each' | 'highest and lowest';
  /** A USB PD port that can give 3 A at its lowest voltage is tested there with 2 A. */
  readonly lowestVoltageAmps: number | null;
  /** Most that each port counts with in the derating factor at the lowest voltage of a USB PD supply, W; null where the rule says nothing. */
  readonly mostAtLowest: number | null;
  /** Highest voltage that a USB PD supply may have to count as one in this rule; null where it sets none. */
  readonly usbPdUpToVolts: number | null;
  /** Whether ports that are no USB PD ports count in the nameplate power at the lowest voltage; the text of one rule names USB PD ports alone. */
  readonly countsOthersAtLowest: boolean;
  /** Standing of the way several ports are loaded: each by its rating, all made smaller alike where together they are above the total. */
  readonly severalPorts: Standing;
  /** A load that the supply cannot hold is left out of the mean; where the text that was read does not say so, such a mean is undecided. */
  readonly leavesOutUnsustained: boolean;
  readonly average: Readonly<Record<OutputClass, EfficiencyLine | null>>;
  /** Limit at a tenth of the load, and the power above which it stands; null where the rule has none. */
  readonly atTenth: { readonly aboveWatts: number; readonly lines: Readonly<Record<OutputClass, EfficiencyLine | null>> } | null;
  readonly noLoad: Readonly<Record<OutputClass, NoLoadLine | null>>;
  /** What each adaptive output beyond the first adds to the limit without load, and the most it may come to, in watts. */
  readonly noLoadForEachPort: { readonly more: number; readonly most: number } | null;
  /** Round-trip resistance of the cable that is taken off a measurement at the receptacle: up to 3 A, and above; ohms. */
  readonly cableOhms: { readonly upTo3A: number; readonly above3A: number } | null;
  /** Cable at whose end every other output is measured where none came with it: length in metres, cross-section in square metres. */
  readonly otherCable: { readonly length: number; readonly areaUpTo3A: number; readonly areaUpTo5A: number } | null;
  readonly source: Source;
}

/** End of the scope of all rules, in watts. */
export const MOST_WATTS = 250;

/** The step that all rules have, in watts. */
const STEP = 49;

/** The limit at a nameplate power, as a fraction; null where the rule has none for so small a supply. */
export function limitAt({ small, middle, large }: EfficiencyLine, watts: number): number | null {
  if (watts > STEP) return large;
  if (watts > 1) return middle[0] * Math.log(watts) - middle[1] * watts + middle[2];
  return small === null ? null : small[0] * watts + small[1];
}

/** The limit without load at a nameplate power, in watts. */
export function noLoadLimitAt({ upTo49, above49 }: NoLoadLine, watts: number): number {
  return watts > STEP ? above49 : upTo49;
}

/** Class of one output: what it delivers decides. */
export function outputClass(volts: number, amps: number): OutputClass {
  return volts < 6 && amps >= 0.55 ? 'low voltage' : 'basic voltage';
}
