import type { Source } from '../values/value.ts';

/** On-resistance when hot over that at 25 °C, for one part or kind of part. */
export interface OnResistanceFactor {
  readonly kind: string;
  /** Junction temperature, °C. */
  readonly celsius: number;
  readonly factor: number;
  readonly source: Source;
}

function infineon(title: string): Source {
  return {
    title: `Infineon ${title} data sheet`,
    section: 'table 4, typical on-resistance, ratio of the two printed values',
    standing: 'read',
  };
}

/** Factors that were read. The 1.2 to 1.6 of older papers are too low for 600 and 700 V parts at temperature. */
export const ON_RESISTANCE_FACTORS: readonly OnResistanceFactor[] = [
  {
    kind: 'superjunction, 650 V',
    celsius: 100,
    factor: 1.8,
    source: { title: 'Infineon DN 2013-01 rev. 1.1 (2016), PFC boost converter design guide', section: 'p. 12, eq. 17', standing: 'read' },
  },
  { kind: 'superjunction, 500 V', celsius: 150, factor: 1.18 / 0.45, source: infineon('IPD50R500CE') },
  { kind: 'superjunction, 700 V', celsius: 150, factor: 0.84 / 0.37, source: infineon('IPAN70R450P7S') },
  { kind: 'superjunction, 700 V', celsius: 150, factor: 1.03 / 0.49, source: infineon('700 V P7, 0.49 Ω part') },
  {
    kind: 'P-channel in a regulator',
    celsius: 150,
    factor: 2,
    source: { title: 'STMicroelectronics B5973D data sheet', section: 'p. 28, 0.25 Ω and 0.5 Ω at most', standing: 'read' },
  },
];

/** Lowest and highest factor read for parts of a kind at a temperature; null where none was read. */
export function onResistanceRange(kind: string, celsius: number): { readonly low: number; readonly high: number } | null {
  const factors = ON_RESISTANCE_FACTORS.filter((row) => row.kind.startsWith(kind) && row.celsius === celsius).map((row) => row.factor);
  return factors.length === 0 ? null : { low: Math.min(...factors), high: Math.max(...factors) };
}
