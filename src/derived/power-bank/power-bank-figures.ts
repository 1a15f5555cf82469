import type { Known } from '../../values/value.ts';

/** Energy that came out at one voltage, beside the cells and beside what is rated there. */
export interface DeliveredRow {
  /** Output voltage as written: "5 V"; null where it is not said. */
  readonly output: string | null;
  /** Id of the log; null for a measured point. */
  readonly log: string | null;
  /** Position in the entry's measurements; null for a log. */
  readonly index: number | null;
  readonly energy: Known<'energy'>;
  /** Of the energy in the cells. */
  readonly ratio: Known<'ratio'>;
  /** Of the energy that is rated at this voltage; missing where none is. */
  readonly ofRated: Known<'ratio'>;
}

/** Energy and time from empty to full. */
export interface RechargeRow {
  readonly input: string | null;
  readonly energy: Known<'energy'>;
  readonly time: Known<'time'>;
  /** Greatest delivered energy for the energy taken in. */
  readonly roundTrip: Known<'ratio'>;
}

/** Where an energy stands to the limits for passengers; `not known` without an energy. */
export type TravelClass = 'free' | 'at the limit' | 'with approval' | 'not carried' | 'not known';

/** What a power bank holds, gives back and takes in. Ratios are of energies, never of charges at two voltages. */
export interface PowerBankFigures {
  /** References of the cells. */
  readonly cells: readonly string[];
  /** From the cells: count × nominal voltage × charge. */
  readonly cellEnergy: Known<'energy'>;
  /** As printed: energy, or charge times cell voltage. */
  readonly printed: Known<'energy'>;
  /** What the ratios are of: the cells where they are known, else the print. */
  readonly stored: Known<'energy'>;
  readonly rated: { readonly voltage: string | null; readonly energy: Known<'energy'>; readonly ratio: Known<'ratio'> };
  readonly delivered: readonly DeliveredRow[];
  readonly recharge: readonly RechargeRow[];
  readonly travel: { readonly energy: Known<'energy'>; readonly verdict: TravelClass };
}
