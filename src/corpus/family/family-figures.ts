import type { CorpusSheet } from '../corpus-sheet.ts';
import { spreadOf, type Spread } from '../spread.ts';
import type { TopologyFamily } from '../topology-families.ts';
import { outliersOf } from './outliers.ts';

/** One figure over the members of a family. */
export interface FamilyFigure {
  readonly name: string;
  readonly unit: string;
  readonly decimals: number;
  readonly spread: Spread;
  /** Members far from the others, farthest first. */
  readonly outliers: readonly { readonly sheet: CorpusSheet; readonly figure: number; readonly side: 'low' | 'high' }[];
}

interface Measure {
  readonly name: string;
  readonly unit: string;
  readonly decimals: number;
  readonly of: (sheet: CorpusSheet) => number | null;
}

/** The figures that two or more members have. Densities are those of closed cases only; a board is another basis. */
export function familyFigures(family: TopologyFamily): readonly FamilyFigure[] {
  const sheets = family.members.map((member) => member.sheet);
  return measuresOf(sheets).flatMap(({ name, unit, decimals, of }) => {
    const spread = spreadOf(sheets.map(of));
    if (spread === null) return [];
    const known = sheets.flatMap((sheet) => {
      const figure = of(sheet);
      return figure === null ? [] : [{ sheet, figure }];
    });
    return [{ name, unit, decimals, spread, outliers: outliersOf(known) }];
  });
}

function measuresOf(sheets: readonly CorpusSheet[]): readonly Measure[] {
  const cased = (sheet: CorpusSheet, figure: number | null): number | null => (sheet.traits.basis === 'cased' ? figure : null);
  const efficiency = commonestEfficiency(sheets);
  return [
    { name: 'Rated power', unit: 'W', decimals: 0, of: (sheet) => sheet.ratedWatts },
    { name: 'Power density, cased', unit: 'W/cm³', decimals: 3, of: (sheet) => cased(sheet, sheet.densityWPerCm3) },
    { name: 'Power by mass, cased', unit: 'W/kg', decimals: 0, of: (sheet) => cased(sheet, sheet.traits.wattsPerKilogram) },
    ...(efficiency === null
      ? []
      : [
          {
            name: `Efficiency, ${efficiency.words}`,
            unit: '%',
            decimals: 1,
            of: (sheet: CorpusSheet) => (efficiencyKey(sheet) === efficiency.key ? 100 * (sheet.traits.efficiency?.ratio ?? 0) : null),
          },
        ]),
    { name: 'Parts identified', unit: 'pieces', decimals: 0, of: (sheet) => sheet.partsIdentified },
    {
      name: 'Bulk capacitance',
      unit: 'µF/W',
      decimals: 2,
      of: ({ bulkMicrofarads, ratedWatts }) =>
        bulkMicrofarads === null || ratedWatts === null || ratedWatts <= 0 ? null : bulkMicrofarads / ratedWatts,
    },
  ];
}

/** Only efficiencies of one kind and one supply voltage are comparable: those that most members have. */
function commonestEfficiency(sheets: readonly CorpusSheet[]): { readonly key: string; readonly words: string } | null {
  const groups = [...Map.groupBy(sheets, efficiencyKey)].filter(([key]) => key !== '');
  const [largest] = groups.sort((one, other) => other[1].length - one[1].length || (one[0] < other[0] ? -1 : 1));
  const found = largest?.[1][0]?.traits.efficiency;
  if (largest === undefined || found === undefined || found === null) return null;
  const kind = { average: 'mean', peak: 'highest', point: 'at highest load' }[found.statistic];
  return { key: largest[0], words: `${kind}, ${found.line ?? ''}` };
}

function efficiencyKey({ traits: { efficiency } }: CorpusSheet): string {
  return efficiency === null || efficiency.line === null ? '' : `${efficiency.statistic} ${efficiency.line}`;
}
