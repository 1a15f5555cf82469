import { nearestSheets, NEAREST, type NearSheet } from '../src/corpus/likeness/nearest-sheets.ts';
import { generateFamilies, type GeneratedFamilies } from './generated-families.ts';

/** Shares of right answers among the five shown, and of the right ones that are shown. */
export function precisionAndRecall(
  { sheets, platforms }: GeneratedFamilies,
  nearest: ReadonlyMap<string, readonly NearSheet[]>,
): { readonly precision: number; readonly recall: number } {
  const sizes = new Map<number, number>();
  for (const platform of platforms.values()) sizes.set(platform, (sizes.get(platform) ?? 0) + 1);
  let right = 0;
  let shown = 0;
  let wanted = 0;
  for (const { slug } of sheets) {
    const platform = platforms.get(slug) ?? -1;
    const near = nearest.get(slug) ?? [];
    right += near.filter((sheet) => platforms.get(sheet.slug) === platform).length;
    shown += near.length;
    wanted += Math.min(NEAREST, (sizes.get(platform) ?? 1) - 1);
  }
  return { precision: right / Math.max(1, shown), recall: right / Math.max(1, wanted) };
}

function main(): void {
  console.log('likeness of generated families: six sheets a platform, popular parts shared by unrelated platforms\n');
  for (const count of [625, 1250, 2500, 5000, 10000]) {
    const families = generateFamilies(count);
    // Processor time: what else the machine does at the moment is not counted.
    const start = process.cpuUsage();
    const nearest = nearestSheets(families.sheets);
    const seconds = process.cpuUsage(start).user / 1e6;
    const { precision, recall } = precisionAndRecall(families, nearest);
    console.log(
      `${String(count).padStart(6)} sheets ${seconds.toFixed(2).padStart(6)} s ${((1e6 * seconds) / count).toFixed(0).padStart(5)} µs a sheet` +
        `   precision at ${String(NEAREST)} ${precision.toFixed(3)}   recall at ${String(NEAREST)} ${recall.toFixed(3)}`,
    );
  }
}

if (import.meta.main) main();
