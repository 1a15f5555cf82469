import type { SheetSummary } from './prepared.ts';

/** A device by what it delivers and the room it takes. */
export interface SizedDevice {
  readonly slug: string;
  readonly name: string;
  readonly kind: string;
  /** cm³ */
  readonly volume: number;
  readonly watts: number;
}

/** All devices whose volume and rating are known, in the order of the sheets. */
export function sizedDevices(sheets: readonly SheetSummary[]): readonly SizedDevice[] {
  return sheets.flatMap(({ slug, name, kind, ratedWatts, densityWPerCm3 }) =>
    ratedWatts === null || densityWPerCm3 === null || ratedWatts <= 0 || densityWPerCm3 <= 0
      ? []
      : [{ slug, name, kind, watts: ratedWatts, volume: ratedWatts / densityWPerCm3 }],
  );
}
