import type { Source } from '../values/value.ts';

/** A 400 V electrolytic: capacitance in F, diameter and length in m, ripple current in A rms at 120 Hz and 105 °C. */
export interface RippleRating {
  readonly farads: number;
  readonly diameter: number;
  readonly length: number;
  readonly amperes: number;
}

/** Ripple ratings of one long-life series: what a can of that size carries. */
export const BULK_RIPPLE_RATINGS: { readonly rows: readonly RippleRating[]; readonly source: Source } = {
  rows: [
    { farads: 22e-6, diameter: 0.01, length: 0.0315, amperes: 0.275 },
    { farads: 33e-6, diameter: 0.0125, length: 0.025, amperes: 0.385 },
    { farads: 33e-6, diameter: 0.016, length: 0.02, amperes: 0.45 },
    { farads: 47e-6, diameter: 0.016, length: 0.02, amperes: 0.52 },
    { farads: 68e-6, diameter: 0.018, length: 0.025, amperes: 0.735 },
    { farads: 68e-6, diameter: 0.0125, length: 0.04, amperes: 0.72 },
  ],
  source: {
    title: 'Nichicon UCY series data sheet',
    section: '400 V, 105 °C, 120 Hz; 12 000 h, 10 000 h for 20 mm long cans',
    standing: 'read',
  },
};

/** Thermal resistance of transformer cores in still air, K/W. */
export const CORE_THERMAL_RESISTANCES: {
  readonly rows: readonly { readonly core: string; readonly kelvinPerWatt: number }[];
  readonly source: Source;
} = {
  rows: [
    { core: 'ETD24', kelvinPerWatt: 28 },
    { core: 'ETD34', kelvinPerWatt: 19 },
  ],
  source: { title: 'Texas Instruments / Unitrode MAG100A, Magnetics design handbook', section: 'natural convection', standing: 'read' },
};
