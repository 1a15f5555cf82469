import type { CorpusSheet } from './corpus-sheet.ts';
import type { SheetFacts } from './sheet-facts.ts';

/** One device as the finder knows it. Numbers are in the unit of their column; null is "not known". */
export interface FinderRow {
  readonly slug: string;
  readonly maker: string;
  readonly name: string;
  readonly number: string | null;
  readonly revision: string;
  readonly kind: string;
  readonly watts: number | null;
  readonly volume: number | null;
  readonly density: number | null;
  readonly specific: number | null;
  readonly mass: number | null;
  readonly efficiency: number | null;
  readonly ports: number | null;
  readonly year: number | null;
  /** In the currency that most sheets use; null where another was paid. */
  readonly price: number | null;
  readonly family: string;
  readonly switches: readonly string[];
  readonly controllers: readonly string[];
  readonly over: number;
  readonly straddles: number;
  readonly withheld: number;
  readonly within: number;
}

/** All devices, with what their lists of words mean. */
export interface FinderRegister {
  readonly rows: readonly FinderRow[];
  /** Currency of the prices; null where nobody states one. */
  readonly currency: string | null;
  /** Names of the topology families by id. */
  readonly families: Readonly<Record<string, string>>;
}

/** What the finder knows of every sheet, in the given order. A sheet without facts has only what its summary says. */
export function finderRegister(
  sheets: readonly CorpusSheet[],
  factsOfSlug: (slug: string) => SheetFacts | null,
  families: Readonly<Record<string, string>>,
): FinderRegister {
  const facts = sheets.map((sheet) => factsOfSlug(sheet.slug));
  const currency = mostFrequent(facts.map((each) => each?.price?.currency ?? null));
  const rows = sheets.map((sheet, index): FinderRow => {
    const own = facts[index] ?? null;
    return {
      slug: sheet.slug,
      maker: sheet.maker,
      name: sheet.name,
      number: sheet.number,
      revision: sheet.revision,
      kind: sheet.kind,
      watts: sheet.ratedWatts,
      volume: own?.volumeCm3 ?? null,
      density: sheet.densityWPerCm3 === null ? null : Number(sheet.densityWPerCm3.toFixed(3)),
      specific: own?.wattsPerKilogram ?? null,
      mass: own?.massGrams ?? null,
      efficiency: own?.efficiencyPercent ?? null,
      ports: sheet.ports.length,
      year: own?.year ?? null,
      price: own?.price != null && own.price.currency === currency ? own.price.amount : null,
      family: sheet.family,
      switches: own?.switches ?? [],
      controllers: own?.controllers ?? [],
      over: sheet.over,
      straddles: sheet.straddles,
      withheld: sheet.withheld,
      within: sheet.within,
    };
  });
  return { rows, currency, families };
}

function mostFrequent(words: readonly (string | null)[]): string | null {
  const counts = new Map<string, number>();
  for (const word of words) if (word !== null) counts.set(word, (counts.get(word) ?? 0) + 1);
  return [...counts].sort((one, other) => other[1] - one[1] || (one[0] < other[0] ? -1 : 1))[0]?.[0] ?? null;
}
