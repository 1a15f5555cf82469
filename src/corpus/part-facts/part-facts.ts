import type { Correction } from '../../entry/entry.ts';

/** Fields of a part that its fact sheet can state. */
export const FACT_FIELDS = ['maker', 'rating', 'package', 'technology', 'datasheet'] as const;

/** One of those fields. */
export type FactField = (typeof FACT_FIELDS)[number];

/** What the author knows of a part number itself, kept once in `parts/<number>.yaml` and used by every entry that names the number. */
export interface PartFacts {
  readonly number: string;
  /** Spellings that the author says are the same part. */
  readonly alsoWritten: readonly string[];
  readonly stated: Readonly<Partial<Record<FactField, string>>>;
  readonly note: string | null;
  /** Changes to this sheet; `where` names the field. They are listed on every page that the sheet feeds. */
  readonly corrections: readonly Correction[];
  /** Path from the content folder, forward slashes. */
  readonly file: string;
  /** Line of each stated field in the file. */
  readonly lines: Readonly<Partial<Record<FactField, number>>>;
  /** Hash of the file: what an entry was made with. */
  readonly hash: string;
}

/** The fact sheets by every spelling that they name. */
export type PartFactsByNumber = ReadonlyMap<string, PartFacts>;

/** Fact sheets by number and by the other spellings that they name; of two that name one, the first is kept. */
export function factsByNumber(sheets: readonly PartFacts[]): PartFactsByNumber {
  const found = new Map<string, PartFacts>();
  for (const sheet of sheets) {
    for (const number of [sheet.number, ...sheet.alsoWritten]) if (!found.has(number)) found.set(number, sheet);
  }
  return found;
}

/** What of the fact sheets an entry with these part numbers was made with; equal keys mean the same facts. */
export function factsKey(numbers: readonly string[], facts: PartFactsByNumber): string {
  const used = [...new Set(numbers)].sort().flatMap((number) => {
    const sheet = facts.get(number);
    return sheet === undefined ? [] : [`${number}:${sheet.hash}`];
  });
  return used.join(' ');
}
