import type { SheetSummary } from '../../pipeline/prepared.ts';
import type { Rank } from '../render/title-block.ts';

/** Place of each sheet among all by power density, the densest first; equal densities share a place. */
export function densityRanks(sheets: readonly SheetSummary[]): ReadonlyMap<string, Rank> {
  const dense = sheets.flatMap((sheet) => (sheet.densityWPerCm3 === null ? [] : [{ slug: sheet.slug, density: sheet.densityWPerCm3 }]));
  dense.sort((one, other) => other.density - one.density);
  const ranks = new Map<string, Rank>();
  let place = 0;
  dense.forEach((sheet, index) => {
    if (index === 0 || dense[index - 1]?.density !== sheet.density) place = index + 1;
    ranks.set(sheet.slug, { place, of: dense.length });
  });
  return ranks;
}
