/** A number with what is certain of it. */
export interface GainSpan {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

/** Frequency over resonance, and the gain there. */
export type GainPlace = readonly [ratio: number, gain: number];

/** Gain over frequency at the full load of one output. */
interface LoadedLine {
  /** Words at its end: "full load". */
  readonly words: string;
  readonly pairs: readonly GainPlace[];
  readonly peak: GainPlace;
  /** "2.3 at 49 kHz". */
  readonly peakWords: string;
}

/** A gain that an output asks for at a bus. */
export interface GainLevel {
  /** "20 V 5 A, bus 390 V". */
  readonly words: string;
  /** "0.99". */
  readonly number: string;
  readonly gain: GainSpan;
}

/** A corner at which the tank has to work. */
export interface GainMark {
  readonly isLoaded: boolean;
  readonly ratio: GainSpan;
  readonly gain: GainSpan;
  /** "129 kHz". */
  readonly words: string;
}

/** What the figure is drawn from: numbers, and the words that stand beside them. */
export interface GainFigure {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  /** Resonant frequency for the second row of the axis, and its words: "124 kHz". */
  readonly resonance: { readonly kilohertz: number; readonly words: string };
  /** The strongest output first, then the weakest where it is another one. */
  readonly loaded: readonly LoadedLine[];
  readonly noLoad: readonly GainPlace[];
  readonly levels: readonly GainLevel[];
  readonly marks: readonly GainMark[];
  /** Given switching frequency over resonance: "measured 121 kHz"; null where none is given. */
  readonly running: { readonly span: GainSpan; readonly words: string } | null;
  readonly layout: 'sheet' | 'phone';
}
