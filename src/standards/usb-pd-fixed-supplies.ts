import { usbPd } from './usb-pd.ts';

/** A fixed voltage that a source must offer once its rated power is above a limit. */
interface FixedSupply {
  /** Watts; the voltage belongs to ratings above this. */
  readonly above: number;
  readonly volts: number;
  /** Most that an object of this voltage carries at the largest rating: its watts. */
  readonly upTo: number;
}

/** Fixed supplies to 100 W. The highest of them carries rated power over voltage, those below at least 3 A. */
const SPR_FIXED_SUPPLIES: readonly FixedSupply[] = [
  { above: 0, volts: 5, upTo: 15 },
  { above: 15, volts: 9, upTo: 27 },
  { above: 27, volts: 15, upTo: 45 },
  { above: 45, volts: 20, upTo: 100 },
];

/** Fixed supplies above 100 W, on top of the others. The highest carries rated power over voltage, those below and 20 V carry 5 A. */
const EPR_FIXED_SUPPLIES: readonly FixedSupply[] = [
  { above: 100, volts: 28, upTo: 140 },
  { above: 140, volts: 36, upTo: 180 },
  { above: 180, volts: 48, upTo: 240 },
];

export const FIXED_SUPPLIES = { source: usbPd('10.2.2, Table 10.2, and Table 10.12') } as const;

/** Current of the lower voltages of a source to 100 W. */
const LOWER_VOLTAGE_AMPS = 3;

/** Largest current of any object. */
const MOST_AMPS = 5;

/** Optional fixed voltages end here, and a source above 100 W may have none. Editions before it allowed others, 12 V among them. */
export const OPTIONAL_VOLTS = { most: 9, source: usbPd('10.2.3.1') } as const;

/** The current of a fixed object may be rounded up or down to 10 mA: 2.22 A and 2.23 A are both right for 20 W at 9 V. */
export const FIXED_ROUNDING = { amps: 0.01, source: usbPd('10.2') } as const;

/** What a fixed supply must carry for a rated power. */
export interface RequiredSupply {
  readonly volts: number;
  readonly amps: number;
}

/** Fixed supplies that a source of this rated power (watts) must offer, lowest first. */
export function requiredSupplies(watts: number): readonly RequiredSupply[] {
  const spr = SPR_FIXED_SUPPLIES.filter(({ above }) => watts > above);
  if (watts <= 100) {
    return spr.map(({ volts }, index) => ({
      volts,
      amps: index === spr.length - 1 ? Math.min(watts / volts, MOST_AMPS) : LOWER_VOLTAGE_AMPS,
    }));
  }
  const epr = EPR_FIXED_SUPPLIES.filter(({ above }) => watts > above);
  return [
    ...spr.map(({ volts }) => ({ volts, amps: volts === 20 ? MOST_AMPS : LOWER_VOLTAGE_AMPS })),
    ...epr.map(({ volts }, index) => ({ volts, amps: index === epr.length - 1 ? Math.min(watts / volts, MOST_AMPS) : MOST_AMPS })),
  ];
}
