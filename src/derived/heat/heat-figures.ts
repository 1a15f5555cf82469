import type { TouchDuration } from '../../standards/touch-temperature.ts';
import type { Known } from '../../values/value.ts';
import type { LimitVerdict } from '../mains/mains-figures.ts';
import type { EmissivityDoubt } from './bare-metal.ts';

/** What a measured temperature is compared with. */
export type HeatLimit =
  | { readonly of: 'touch'; readonly contact: TouchDuration; /** How that one cell of the table is known. */ readonly isRead: boolean }
  | { readonly of: 'part'; readonly references: readonly string[] }
  | { readonly of: 'nothing' };

/** One measured temperature with its rise, beside the limit for touching it or the rating of the part it was taken on. */
export interface HotSpot {
  /** Position in the entry's measurements. */
  readonly index: number;
  readonly place: string;
  readonly measured: Known<'temperature'>;
  readonly ambient: Known<'temperature'>;
  /** Missing without an air temperature. */
  readonly rise: Known<'temperature difference'>;
  /** Line, load and time as written: "115 V, 100 %, after 60 min"; null where none is said. */
  readonly conditions: string | null;
  /** Whether somebody can touch it: a place on the case. */
  readonly isOutside: boolean;
  readonly material: 'plastic' | 'metal';
  readonly limit: Known<'temperature'>;
  readonly limitOf: HeatLimit;
  readonly verdict: LimitVerdict;
  /** Reported by the device itself or by what is plugged in: shown, never judged. */
  readonly isReported: boolean;
  /** Doubt about a reading of bare metal by its radiation. */
  readonly emissivity: EmissivityDoubt | null;
}

/** The limit for one material and one contact time, beside the hottest place of that material that can be touched. */
export interface ContactLimit {
  readonly material: 'plastic' | 'metal';
  readonly contact: TouchDuration;
  readonly limit: Known<'temperature'>;
  readonly isRead: boolean;
  /** Whether this is the contact time that the device is judged by. */
  readonly isAsked: boolean;
  readonly hottest: Known<'temperature'>;
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
  readonly contacts: readonly ContactLimit[];
  readonly lives: readonly CapacitorLife[];
}
