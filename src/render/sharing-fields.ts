import type { SheetSummary } from '../corpus/prepared.ts';
import { fixedNumber } from './fixed-number.ts';

/** Pixels of a sharing image: the size that readers of the Open Graph protocol show without cropping (common practice). */
export const SHARING_SIZE = { width: 1200, height: 630 } as const;

/** What the title block of a sharing image says; a field without data says so. */
export interface SharingFields {
  /** Maker and name, on a line each. */
  readonly name: readonly string[];
  readonly power: string;
  readonly density: string;
  readonly size: string;
  readonly kind: string;
  /** Number, revision, date: where each begins as a fraction of the width. */
  readonly issue: readonly { readonly label: string; readonly value: string; readonly at: number }[];
}

/** Power with one decimal where it is no whole number, density with three, as the sheet has them. */
export function sharingFields(sheet: SheetSummary): SharingFields {
  const { maker, name, ratedWatts, densityWPerCm3 } = sheet;
  return {
    name: name.startsWith(maker) ? [name] : [maker, name],
    power: ratedWatts === null ? '–' : `${fixedNumber(ratedWatts, Math.abs(ratedWatts - Math.round(ratedWatts)) < 0.05 ? 0 : 1)}\u00a0W`,
    density: densityWPerCm3 === null ? '–' : `${fixedNumber(densityWPerCm3, 3)}\u00a0W/cm³`,
    size: sizeWords(sheet),
    kind: sheet.kind,
    issue: [
      { label: 'Number', value: sheet.number ?? '–', at: 0 },
      { label: 'Revision', value: sheet.revision === '' ? '–' : sheet.revision, at: 0.4 },
      { label: 'Date of issue', value: sheet.published === '' ? '–' : sheet.published, at: 0.66 },
    ],
  };
}

/** The image in words, for those who do not see it. */
export function sharingAlt(sheet: SheetSummary): string {
  const { name, power, density, size, kind } = sharingFields(sheet);
  const figures = [...(power === '–' ? [] : [power]), ...(size === '–' ? [] : [`${size} mm`]), ...(density === '–' ? [] : [density])];
  const recalled = sheet.recall === null ? '' : 'Recalled. ';
  return `${recalled}Drawing sheet of the ${kind} ${name.join(' ')}: outline, title block and power path${figures.length === 0 ? '' : `; ${figures.join(', ')}`}.`;
}

function sizeWords({ outline, round }: SheetSummary): string {
  if (outline === null) return '–';
  const edges = outline.map((edge) => fixedNumber(edge, Number.isInteger(Math.round(edge * 10) / 10) ? 0 : 1));
  return round === true ? `⌀${edges.slice(1).join(' × ')}` : edges.join(' × ');
}

/** Where the image of a sheet stands, from the root of the site; a name without a hash, since others keep its address. */
export function sharingPath(slug: string): string {
  return `teardowns/${slug}/sharing.png`;
}
