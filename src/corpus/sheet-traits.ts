import type { Verdict } from '../derived/derived.ts';

/** The worst stress of one role and quantity on a sheet, without its interval. */
export interface TraitStress {
  readonly role: string;
  readonly quantity: string;
  /** Stress over rating; null where it is withheld. */
  readonly ratio: number | null;
  /** Highest ratio that the derating policy accepts, null where it names none. */
  readonly limit: number | null;
  readonly verdict: Verdict;
}

/** A value that tells designs apart: its kind ("bulk-capacitor", "turns"), and what is printed of it ("100 µF"). */
export interface TraitValue {
  readonly kind: string;
  readonly words: string;
}

/** The efficiency that stands for a device, with what has to be equal before two of them are compared. */
export interface TraitEfficiency {
  readonly ratio: number;
  readonly statistic: 'point' | 'average' | 'peak';
  /** Line voltage as printed; null where it is not said. */
  readonly line: string | null;
  /** "connector", "board", "cable end"; null where it is not said. */
  readonly place: string | null;
  /** Conditions that are not given; with one lacking it is shown and not ranked. */
  readonly lacking: readonly string[];
}

/** What a sheet is compared by, and nothing that no other sheet can have too. Plain data of two or three kilobytes. */
export interface SheetTraits {
  /** What is inside the volume: "cased", "board". */
  readonly basis: string;
  readonly massGrams: number | null;
  readonly wattsPerKilogram: number | null;
  readonly efficiency: TraitEfficiency | null;
  readonly stress: readonly TraitStress[];
  /** Whether a stage crosses an insulation barrier. */
  readonly isolated: boolean;
  readonly rectification: 'synchronous' | 'diode' | 'not known';
  /** One piece a stage that feeds ports: "buck: USB-C", "buck: USB-C + USB-A"; in the order power flows. */
  readonly fanOut: readonly string[];
  /** Output ports, the strongest first: "USB-C 100 W". */
  readonly ports: readonly string[];
  /** How they share: "total 100 W", "2 × USB-C: 50 W + 50 W". */
  readonly sharing: readonly string[];
  readonly values: readonly TraitValue[];
  /** How its figures are known: "measured", "computed", "computed, rests on an assumption"; null for a missing one. */
  readonly evidence: Readonly<Record<TraitFigure, string | null>>;
}

/** Figures whose evidence goes with them. */
type TraitFigure = 'ratedPower' | 'density' | 'mass' | 'specificPower' | 'efficiency' | 'bulk';
