import { usbPd, usbPd30 } from './usb-pd.ts';

/** A named programmable range. */
export interface ProgrammableRange {
  readonly name: string;
  readonly nominal: number;
  readonly top: number;
}

/** Ranges of PPS by the newest edition; all begin at 5 V. */
export const PPS_RANGES = {
  floor: 5,
  ranges: [
    { name: '9 V Prog', nominal: 9, top: 11 },
    { name: '15 V Prog', nominal: 15, top: 16 },
    { name: '20 V Prog', nominal: 20, top: 21 },
  ],
  source: usbPd('Table 10.11'),
} as const satisfies { readonly ranges: readonly ProgrammableRange[]; readonly floor: number; readonly source: unknown };

/** Earlier editions began at 3.0 V (R3.0, first printings) or 3.3 V, and had a range of 5 V. */
export const OLDER_PPS_RANGES = {
  floors: [3, 3.3],
  ranges: [{ name: '5 V Prog', nominal: 5, top: 5.9 }],
  source: usbPd30('programmable ranges; 3.3 V floor in a public kernel table'),
} as const;

/** A programmable range that a source with PPS must have for its rated power, and its least current in amperes. */
export interface RequiredRange {
  readonly nominal: number;
  readonly amps: number;
}

/** PPS is optional; a source that has it has these ranges. Currents are rounded down to 50 mA. */
export const PPS_CURRENTS = { step: 0.05, source: usbPd('10.2.3.2, Table 10.10') } as const;

/** Steps of 50 mA, rounded down: 65 W at 9 V is 7.2 A, and 20 W at 9 V 2.20 A. */
export function ppsAmps(watts: number, nominal: number): number {
  return Number((Math.floor(watts / nominal / PPS_CURRENTS.step + 1e-9) * PPS_CURRENTS.step).toPrecision(12));
}

/** Ranges for a rated power in watts; none up to 15 W. At the exact top of a band the higher range stands alone. */
export function requiredRanges(watts: number): readonly RequiredRange[] {
  if (watts <= 15) return [];
  const at = (nominal: number): RequiredRange => ({ nominal, amps: Math.min(5, ppsAmps(watts, nominal)) });
  if (watts <= 27) return [at(9)];
  if (watts < 45) return [{ nominal: 9, amps: 3 }, at(15)];
  if (watts === 45) return [at(15)];
  if (watts < 60) return [{ nominal: 15, amps: 3 }, at(20)];
  return [at(20)];
}

/** The current limit of PPS cannot be set below this. */
export const LEAST_PPS_AMPS = { amps: 1, source: usbPd('Table 7.23') } as const;

/** EPR AVS runs from 15 V to a top that its rated power decides. */
export const EPR_AVS = {
  floor: 15,
  tops: [
    { upTo: 140, volts: 28 },
    { upTo: 180, volts: 36 },
    { upTo: 240, volts: 48 },
  ],
  source: usbPd('Table 10.12; 6.5.15.1'),
} as const;

/** Highest voltage of EPR AVS for a rated power in watts. */
export function eprAvsTop(watts: number): number {
  return EPR_AVS.tops.find(({ upTo }) => watts <= upTo)?.volts ?? 48;
}

/** SPR AVS belongs to ratings above 27 W: 9 to 15 V, above 45 W to 20 V, with the currents of the fixed 15 V and 20 V objects. New in R3.2. */
export const SPR_AVS = { above: 27, to20Above: 45, source: usbPd('Tables 10.2 and 10.9; 6.4.1.2.4.2') } as const;
