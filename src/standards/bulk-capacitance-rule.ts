import type { Source } from '../values/value.ts';

/** Customary capacitance for each watt of input power, F/W, without PFC. */
export const BULK_CAPACITANCE_RULE: {
  readonly worldWide: { readonly low: number; readonly high: number };
  readonly highLineOnly: number;
  readonly source: Source;
} = {
  worldWide: { low: 2e-6, high: 3e-6 },
  highLineOnly: 1e-6,
  source: {
    title: 'Fairchild Semiconductor AN-4137 rev. 1.3.0 (2003)',
    section: '2 to 3 µF for each input watt at 85 to 265 V, 1 µF at 195 to 265 V',
    standing: 'read',
  },
};

/** Where the power factor of a supply without PFC lies. */
export const POWER_FACTOR_WITHOUT: readonly { readonly low: number; readonly high: number; readonly source: Source }[] = [
  {
    low: 0.6,
    high: 0.7,
    source: { title: 'Power-One, Input current calculation (2007)', section: '0.6 at least, 0.7 typical', standing: 'read' },
  },
  { low: 0.5, high: 0.7, source: { title: 'Matsusada, power factor of supplies without PFC', section: '0.5 to 0.7', standing: 'read' } },
];
