import type { Verdict } from '../../derived/derived.ts';
import { roleOf } from '../../roles/index.ts';
import { compareText } from '../compare-text.ts';
import type { CorpusSheet } from '../corpus-sheet.ts';
import { medianOf } from '../spread.ts';

/** One stress of one role over all sheets of a family. */
export interface FamilyStress {
  /** "bulk capacitor, voltage". */
  readonly name: string;
  /** Worst ratio of each sheet that has one, lowest first. */
  readonly marks: readonly { readonly ratio: number; readonly verdict: Verdict }[];
  /** Derating limit that most of the sheets are judged by; null where there is none. */
  readonly limit: number | null;
  readonly median: number;
  readonly worst: number;
  /** Whether any sheet is over its limit. */
  readonly isOver: boolean;
}

/** Stresses that at least one sheet of a family has a ratio for, in the order in which power meets them; each sheet by its worst. */
export function familyStress(sheets: readonly CorpusSheet[]): readonly FamilyStress[] {
  const rows = new Map<string, { readonly marks: { ratio: number; verdict: Verdict }[]; readonly limits: number[]; place: number }>();
  for (const sheet of sheets) {
    for (const [place, { role, quantity, ratio, limit, verdict }] of sheet.traits.stress.entries()) {
      if (ratio === null) continue;
      const name = `${roleOf(role)?.name ?? role.replaceAll('-', ' ')}, ${quantity}`;
      const row = rows.get(name) ?? { marks: [], limits: [], place };
      row.marks.push({ ratio, verdict });
      row.place = Math.max(row.place, place);
      if (limit !== null) row.limits.push(limit);
      rows.set(name, row);
    }
  }
  return [...rows]
    .sort(([one, first], [other, second]) => first.place - second.place || compareText(one, other))
    .map(([name, { marks, limits }]) => rowOf(name, marks, limits));
}

function rowOf(
  name: string,
  marks: readonly { readonly ratio: number; readonly verdict: Verdict }[],
  limits: readonly number[],
): FamilyStress {
  const sorted = [...marks].sort((one, other) => one.ratio - other.ratio || compareText(one.verdict, other.verdict));
  const ratios = sorted.map(({ ratio }) => ratio);
  return {
    name,
    marks: sorted,
    limit: commonest(limits),
    median: medianOf(ratios) ?? 0,
    worst: ratios.at(-1) ?? 0,
    isOver: sorted.some(({ verdict }) => verdict === 'over'),
  };
}

/** The value that stands most often; of equals the lowest. */
function commonest(numbers: readonly number[]): number | null {
  const counts = new Map<number, number>();
  for (const number of numbers) counts.set(number, (counts.get(number) ?? 0) + 1);
  return [...counts].sort((one, other) => other[1] - one[1] || one[0] - other[0])[0]?.[0] ?? null;
}
