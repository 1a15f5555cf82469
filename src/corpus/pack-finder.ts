import type { FinderRegister, FinderRow } from './finder-row.ts';

/**
 * The register as it travels: one list a column, words once and then by their place. Columns of like values compress to a
 * third of what one object a device does.
 */
export interface PackedFinder {
  readonly currency: string | null;
  readonly families: FinderRegister['families'];
  readonly words: { readonly [column in WordColumn]: readonly string[] };
  readonly columns: { readonly [column in keyof FinderRow]: readonly PackedCell[] };
}

type PackedCell = string | number | null | readonly number[];
type WordColumn = (typeof WORD_COLUMNS)[number];

const WORD_COLUMNS = ['maker', 'kind', 'revision', 'family', 'switches', 'controllers'] as const;
const PLAIN_COLUMNS = [
  'slug', 'name', 'number', 'watts', 'volume', 'density', 'specific', 'mass', 'efficiency', 'ports', 'year', 'price', 'over', 'straddles', 'withheld', 'within',
] as const; // prettier-ignore

/** Packs the register; `unpackFinder` gives it back unchanged. */
export function packFinder({ rows, currency, families }: FinderRegister): PackedFinder {
  const lists = new Map<WordColumn, Map<string, number>>(WORD_COLUMNS.map((column) => [column, new Map<string, number>()]));
  const placeOf = (column: WordColumn, word: string): number => {
    const list = lists.get(column);
    const known = list?.get(word);
    if (known !== undefined) return known;
    const place = list?.size ?? 0;
    list?.set(word, place);
    return place;
  };
  const packed = Object.fromEntries([
    ...PLAIN_COLUMNS.map((column) => [column, rows.map((row) => row[column])] as const),
    ...WORD_COLUMNS.map(
      (column) =>
        [
          column,
          rows.map((row): PackedCell => {
            const cell = row[column];
            return typeof cell === 'string' ? placeOf(column, cell) : cell.map((word) => placeOf(column, word));
          }),
        ] as const,
    ),
  ]);
  const words = Object.fromEntries(WORD_COLUMNS.map((column) => [column, [...(lists.get(column)?.keys() ?? [])]]));
  // Both records were made from the very lists of columns that their types name.
  return { currency, families, words: words as unknown as PackedFinder['words'], columns: packed as unknown as PackedFinder['columns'] };
}

/** The register out of what `packFinder` made. */
export function unpackFinder({ currency, families, words, columns }: PackedFinder): FinderRegister {
  const rows = columns.slug.map((_, index) => {
    const row: Record<string, unknown> = {};
    for (const column of PLAIN_COLUMNS) row[column] = columns[column][index] ?? null;
    for (const column of WORD_COLUMNS) {
      const cell = columns[column][index];
      row[column] = Array.isArray(cell) ? cell.map((place: number) => words[column][place] ?? '') : (words[column][Number(cell)] ?? '');
    }
    // Every column of the interface was set above.
    return row as unknown as FinderRow;
  });
  return { rows, currency, families };
}
