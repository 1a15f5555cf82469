import type { Accuracy } from '../../entry/bench.ts';
import { instrumentUncertainty } from '../../formulas/measurement/instrument-uncertainty.ts';

/**
 * Greatest distance of the true value from a reading, in the SI unit of the quantity.
 *
 * @param reading what the instrument shows; at 0 what is left is the part that does not grow with the reading
 * @param lastPlace weight of the last place as written, taken where the accuracy states none
 */
export function readingUncertainty(accuracy: Accuracy, reading: number, lastPlace: number): number {
  const { ofReading, ofRange, range, counts, fixed } = accuracy;
  const resolution = accuracy.resolution ?? lastPlace;
  return fixed + instrumentUncertainty.compute({ reading, ofReading, range: range ?? 0, ofRange, counts, resolution });
}
