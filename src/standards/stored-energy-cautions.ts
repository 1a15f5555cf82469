import type { Source } from '../values/value.ts';

/** One line above which stored energy calls for a caution. */
export interface StoredEnergyLine {
  readonly hazard: 'shock' | 'burn' | 'blast';
  /** Voltage from which (or below which, for burns) the line counts, in volts. */
  readonly fromVolts: number | null;
  readonly belowVolts: number | null;
  /** Energy from which it counts, in joules. */
  readonly fromJoules: number;
  readonly says: string;
  readonly source: Source;
}

const BERKELEY: Source = {
  title: 'Berkeley Lab, Electrical safety manual',
  section: 'tables 2.2.13, 2.3.3 and 2.3.5, stored energy of capacitors',
  standing: 'read',
  url: 'https://electricalsafety.lbl.gov/electrical-safety-program-esp/hazardous-mean-electrical-safety',
};

/** Lines above which a laboratory calls the energy of a capacitor hazardous. */
export const STORED_ENERGY_LINES: readonly StoredEnergyLine[] = [
  { hazard: 'shock', fromVolts: 100, belowVolts: null, fromJoules: 10, says: 'shock hazard from 100 V and 10 J', source: BERKELEY },
  { hazard: 'burn', fromVolts: null, belowVolts: 100, fromJoules: 100, says: 'burn hazard below 100 V from 100 J', source: BERKELEY },
  { hazard: 'blast', fromVolts: 100, belowVolts: null, fromJoules: 10_000, says: 'blast hazard from 100 V and 10 kJ', source: BERKELEY },
];

/** Voltage to which a capacitor must have fallen before this site calls its terminals safe to touch, in volts. */
export const SAFE_VOLTAGE: { readonly volts: number; readonly source: Source } = {
  volts: 60,
  source: {
    title: 'IEC 62368-1, 5.2.2.2, table 4',
    section: 'ES1 limit of 60 V for direct voltage, read in a public rendering of the clause',
    standing: 'secondary',
  },
};

/** The lines that a stored energy reaches. Below every line a charged capacitor still gives a shock. */
export function energyLinesReached(volts: number, joules: number): readonly StoredEnergyLine[] {
  return STORED_ENERGY_LINES.filter(
    (line) =>
      joules >= line.fromJoules &&
      (line.fromVolts === null || volts >= line.fromVolts) &&
      (line.belowVolts === null || volts < line.belowVolts),
  );
}
