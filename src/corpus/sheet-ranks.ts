import type { CorpusSheet } from './corpus-sheet.ts';
import { powerClass } from './power-class.ts';

/** Place of one sheet among comparable ones by one figure; the highest figure is first, equal ones share a place. */
export interface SheetRank {
  readonly measure: 'density' | 'efficiency' | 'specific power';
  readonly place: number;
  readonly of: number;
  /** What the sheets compared have in common: "cased, over 65 to 100 W". */
  readonly among: string;
}

interface Ranked {
  readonly slug: string;
  readonly figure: number;
}

/**
 * Ranks of every sheet by address: power density, efficiency and power for each kilogram. Only comparable devices are set against each other:
 * one basis (a case is not a board), one power class, and for efficiency one line voltage, one place and one kind of figure (a mean is not a
 * point), with all conditions given.
 * A sheet without a figure, a class or a second sheet beside it has no rank.
 */
export function sheetRanks(sheets: readonly CorpusSheet[]): ReadonlyMap<string, readonly SheetRank[]> {
  const ranks = new Map<string, SheetRank[]>();
  for (const measure of ['density', 'efficiency', 'specific power'] as const) {
    for (const [among, group] of comparable(sheets, measure)) {
      if (group.length < 2) continue;
      for (const { slug, place } of placed(group))
        ranks.set(slug, [...(ranks.get(slug) ?? []), { measure, place, of: group.length, among }]);
    }
  }
  return ranks;
}

function comparable(sheets: readonly CorpusSheet[], measure: SheetRank['measure']): ReadonlyMap<string, readonly Ranked[]> {
  const groups = new Map<string, Ranked[]>();
  for (const sheet of sheets) {
    const figure = figureOf(sheet, measure);
    const group = groupOf(sheet, measure);
    if (figure === null || group === null) continue;
    const known = groups.get(group);
    if (known === undefined) groups.set(group, [{ slug: sheet.slug, figure }]);
    else known.push({ slug: sheet.slug, figure });
  }
  return groups;
}

function figureOf({ densityWPerCm3, traits }: CorpusSheet, measure: SheetRank['measure']): number | null {
  if (measure === 'density') return densityWPerCm3;
  return measure === 'efficiency' ? (traits.efficiency?.ratio ?? null) : traits.wattsPerKilogram;
}

function groupOf({ ratedWatts, traits }: CorpusSheet, measure: SheetRank['measure']): string | null {
  const power = powerClass(ratedWatts);
  if (power === null) return null;
  if (measure !== 'efficiency') return `${traits.basis}, ${power}`;
  const { efficiency } = traits;
  if (efficiency === null || efficiency.line === null || efficiency.lacking.length > 0) return null;
  const kind = { average: 'mean', peak: 'highest', point: 'at highest load' } as const;
  const place = efficiency.place === null ? '' : `, at the ${efficiency.place}`;
  return `${kind[efficiency.statistic]} at ${efficiency.line}${place}, ${power}`;
}

/** Places by figure, the highest first; figures that print alike in four digits share a place. */
function placed(group: readonly Ranked[]): readonly { readonly slug: string; readonly place: number }[] {
  const sorted = [...group].sort((one, other) => other.figure - one.figure);
  const places: { slug: string; place: number; printed: string }[] = [];
  for (const [index, { slug, figure }] of sorted.entries()) {
    const printed = figure.toPrecision(4);
    const before = places.at(-1);
    places.push({ slug, printed, place: before?.printed === printed ? before.place : index + 1 });
  }
  return places;
}
