import type { Known } from '../../values/value.ts';
import type { LimitVerdict } from '../mains/mains-figures.ts';

/** One measured temperature beside the limit for touching it. */
export interface HotSpot {
  /** Position in the entry's measurements. */
  readonly index: number;
  readonly place: string;
  readonly measured: Known<'temperature'>;
  readonly ambient: Known<'temperature'>;
  /** Whether somebody can touch it: a place on the case. */
  readonly isOutside: boolean;
  readonly material: 'plastic' | 'metal';
  readonly limit: Known<'temperature'>;
  /** How that one cell of the table is known. */
  readonly limitIsRead: boolean;
  readonly verdict: LimitVerdict;
}

/** Life of one electrolytic capacitor at the temperature measured on it. */
export interface CapacitorLife {
  readonly references: readonly string[];
  readonly temperature: Known<'temperature'>;
  readonly life: Known<'time'>;
}

/** Loss over surface, what temperature that gives, and what was measured. */
export interface HeatFigures {
  readonly loss: Known<'power'>;
  /** Load at which the loss was measured: "230 V, 20.01 V 5 A". */
  readonly at: string | null;
  readonly surface: Known<'area'>;
  readonly flux: Known<'heat flux'>;
  /** By natural convection and radiation, free air on all faces; the interval holds the ±20 % of the rise. */
  readonly temperature: Known<'temperature'>;
  readonly spots: readonly HotSpot[];
  readonly lives: readonly CapacitorLife[];
}
