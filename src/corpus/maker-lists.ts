import type { CorpusSheet } from './corpus-sheet.ts';
import type { MakerPage, MakerPart } from './maker-uses.ts';
import { pagesOf, type ListPage } from './pages-of.ts';

/** One row of a maker's page: a device sold under the name, or a part that carries it. */
type MakerRow = { readonly device: CorpusSheet } | { readonly part: MakerPart };

/** A maker's rows in pages: devices first, then parts. */
export function makerPages(maker: MakerPage): readonly ListPage<MakerRow>[] {
  return pagesOf<MakerRow>([...maker.devices.map((device) => ({ device })), ...maker.parts.map((part) => ({ part }))]);
}

/** The devices and the parts that one page of a maker lists. */
export function makerLists(
  maker: MakerPage,
  page: number,
): { readonly devices: readonly CorpusSheet[]; readonly parts: readonly MakerPart[]; readonly turner: ListPage<MakerRow> } {
  const turner = makerPages(maker)[page - 1] ?? { page: 1, pages: 1, rows: [], first: 0, total: 0 };
  return {
    devices: turner.rows.flatMap((row) => ('device' in row ? [row.device] : [])),
    parts: turner.rows.flatMap((row) => ('part' in row ? [row.part] : [])),
    turner,
  };
}
