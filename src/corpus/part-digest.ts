import type { CorpusSheet } from './corpus-sheet.ts';
import type { PartPage } from './part-uses.ts';

/** What the page of a part shows of a sheet: its address, number and name. */
export function sheetDigest(sheet: CorpusSheet): readonly unknown[] {
  return [sheet.slug, sheet.number, sheet.maker, sheet.name];
}

/** What the page of a part depends on, and nothing more, so that it is made anew only when that changed. */
export function partDigest(part: PartPage): unknown {
  const uses = part.uses.map((use) => [...sheetDigest(use.sheet), use.maker, use.references, use.role, use.stage, use.rating]);
  return [part.number, uses, part.differing, part.perhapsSame];
}
