import type { Source } from '../values/value.ts';

/** Shape of a current pulse and its factor in peak² × time. */
export const PULSE_SHAPES: { readonly rows: readonly { readonly shape: string; readonly factor: number }[]; readonly source: Source } = {
  rows: [
    { shape: 'step', factor: 1 },
    { shape: 'half sine', factor: 1 / 2 },
    { shape: 'decay through a resistor, time constant', factor: 1 / 2 },
    { shape: 'triangle or ramp', factor: 1 / 3 },
    { shape: 'parabola', factor: 1 / 5 },
  ],
  source: {
    title: 'Littelfuse, Fuse technology pages, catalogue of 3 March 2017',
    section: 'p. 12, chart 1',
    standing: 'read',
    url: 'http://electronicscatalogs.littelfuse.com/guide/fuse-mounting-accessories/12.php',
  },
};

/** Share of the melting integral that pulses may use, by their number. Series differ: another maker allows 35 % for 100 000. */
export const PULSE_SHARES: { readonly rows: readonly { readonly pulses: number; readonly share: number }[]; readonly source: Source } = {
  rows: [
    { pulses: 100, share: 0.48 },
    { pulses: 1000, share: 0.38 },
    { pulses: 10_000, share: 0.29 },
    { pulses: 100_000, share: 0.22 },
  ],
  source: { ...PULSE_SHAPES.source, section: 'p. 12, chart 2; pulses 10 s apart' },
};

/** Share of its rating that a fuse may carry for good, by the standard it follows. */
export const CONTINUOUS_SHARES: readonly { readonly standard: string; readonly share: number; readonly source: Source }[] = [
  {
    standard: 'UL 248-14',
    share: 0.75,
    source: { title: 'EDN, The fuse-selection checklist (26 September 1996)', section: 'ampere rating', standing: 'read' },
  },
  { standard: 'IEC 60127', share: 1, source: { title: 'IEC 60127', section: 'as remarked in a public repository', standing: 'secondary' } },
];

/** When a fuse must hold and when it must open: multiple of the rating and seconds. */
export const FUSE_GATES: {
  readonly rows: readonly {
    readonly standard: string;
    readonly multiple: number;
    readonly seconds: number;
    readonly gate: 'holds' | 'opens';
  }[];
  readonly source: Source;
} = {
  rows: [
    { standard: 'UL 248-14', multiple: 1.1, seconds: 4 * 3600, gate: 'holds' },
    { standard: 'UL 248-14', multiple: 1.35, seconds: 3600, gate: 'opens' },
    { standard: 'UL 248-14', multiple: 2, seconds: 120, gate: 'opens' },
    { standard: 'IEC 60127, fast', multiple: 1.5, seconds: 3600, gate: 'holds' },
    { standard: 'IEC 60127, fast', multiple: 2.1, seconds: 1800, gate: 'opens' },
  ],
  source: { title: 'A maker’s table of fuse characteristics', section: 'as copied on a public page', standing: 'secondary' },
};

/** Time-lag high-breaking fuses of 5 × 20 mm: multiple of the rating, and the shortest and longest time to open in seconds. */
export const TIME_LAG_GATES: {
  readonly rows: readonly { readonly multiple: number; readonly shortest: number | null; readonly longest: number | null }[];
  readonly source: Source;
} = {
  rows: [
    { multiple: 1.5, shortest: 3600, longest: null },
    { multiple: 2.1, shortest: null, longest: 1800 },
    { multiple: 2.75, shortest: 1, longest: 80 },
    { multiple: 4, shortest: 0.095, longest: 5 },
    { multiple: 10, shortest: 0.01, longest: 0.1 },
  ],
  source: {
    title: 'IEC 127-2, sheet 5',
    section: 'as printed on the catalogue sheet of a maker, ratings from 1 A to 3.15 A',
    standing: 'read',
  },
};

/** A time-lag miniature fuse for 250 V: rating (A), cold resistance (Ω), melting integral at ten times the rating (A²s). */
export const TIME_LAG_FUSES: {
  readonly rows: readonly { readonly amperes: number; readonly ohms: number; readonly meltingIntegral: number }[];
  readonly source: Source;
} = {
  rows: [
    { amperes: 1, ohms: 0.0715, meltingIntegral: 8 },
    { amperes: 1.25, ohms: 0.0569, meltingIntegral: 11.95 },
    { amperes: 1.6, ohms: 0.04, meltingIntegral: 18.43 },
    { amperes: 2, ohms: 0.0298, meltingIntegral: 29 },
    { amperes: 2.5, ohms: 0.024, meltingIntegral: 47.81 },
    { amperes: 3.15, ohms: 0.017, meltingIntegral: 78.39 },
    { amperes: 4, ohms: 0.0128, meltingIntegral: 126.4 },
    { amperes: 5, ohms: 0.0101, meltingIntegral: 106.25 },
    { amperes: 6.3, ohms: 0.0077, meltingIntegral: 160.74 },
  ],
  source: {
    title: 'Littelfuse 392 series (TE5), time-lag, 250 V, data sheet',
    section: 'electrical characteristics; 5 A melts at less than 4 A',
    standing: 'read',
  },
};

/**
 * Melting integral, A²s, of a time-lag miniature fuse of this rating, as an example of what such a fuse stands; null for a
 * rating that is not in the table, since the column does not rise all the way and must not be interpolated.
 */
export function meltingIntegralOf(amperes: number): number | null {
  return TIME_LAG_FUSES.rows.find((row) => row.amperes === amperes)?.meltingIntegral ?? null;
}

/** Share of the melting integral that this many pulses may use: the row that covers them; null above the table. */
export function pulseShare(pulses: number): number | null {
  return PULSE_SHARES.rows.find((row) => pulses <= row.pulses)?.share ?? null;
}
