import type { DataPath } from '../diagnostics/finding.ts';

/** What a port can supply, one entry of its list. Volts, amperes, watts. */
export type Offer = OfferBody & {
  /** As the author wrote it: text or the 32-bit word. */
  readonly written: string;
  /** The raw word, where the author gave it. */
  readonly word: number | null;
  readonly path: DataPath;
};

export type OfferBody =
  | { readonly kind: 'fixed'; readonly volts: number; readonly amps: number }
  | { readonly kind: 'variable'; readonly minVolts: number; readonly maxVolts: number; readonly amps: number }
  | { readonly kind: 'battery'; readonly minVolts: number; readonly maxVolts: number; readonly watts: number }
  | {
      readonly kind: 'PPS';
      readonly minVolts: number;
      readonly maxVolts: number;
      readonly amps: number;
      readonly powerLimited: boolean | null;
    }
  | { readonly kind: 'SPR AVS'; readonly ampsTo15V: number; readonly ampsTo20V: number | null }
  | { readonly kind: 'EPR AVS'; readonly minVolts: number; readonly maxVolts: number; readonly watts: number }
  /** Type-C current, BC 1.2 or a plain barrel output without negotiation. */
  | { readonly kind: 'plain'; readonly volts: number; readonly amps: number };
